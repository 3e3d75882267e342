package drumline.planner.cpsat;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.Literal;
import drumline.planner.model.Layout;
import drumline.planner.tables.ProblemTables;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;

/** Reads a layout out of the solver's values. */
final class LayoutReader {
  private final Choice choice;
  private final Clock clock;
  private final IntVar cycle;

  LayoutReader(Choice choice, Clock clock, IntVar cycle) {
    this.choice = choice;
    this.clock = clock;
    this.cycle = cycle;
  }

  Layout read(ToLongFunction<LinearArgument> values) {
    ProblemTables tables = choice.tables;
    List<Layout.Placement> placements = new ArrayList<>();
    for (int i = 0; i < tables.taskCount; i++) {
      int slide = chosen(choice.onSlide[i], values);
      placements.add(
          new Layout.Placement(
              tables.problem.tasks().get(i).id(),
              tables.problem.slides().get(slide).id(),
              chosen(choice.inMode[i], values),
              (int) values.applyAsLong(clock.start[i]),
              (int) values.applyAsLong(clock.end[i])));
    }
    return new Layout(placements, (int) values.applyAsLong(cycle));
  }

  private static int chosen(@Nullable Literal[] literals, ToLongFunction<LinearArgument> values) {
    for (int c = 0; c < literals.length; c++) {
      Literal literal = literals[c];
      if (literal != null && values.applyAsLong(literal) == 1) {
        return c;
      }
    }
    throw new IllegalStateException("the solver chose nothing for a task");
  }
}
