package drumline.planner.cpsat;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.Literal;
import drumline.planner.model.Layout;
import drumline.planner.tables.ProblemTables;
import org.jspecify.annotations.Nullable;

/** Holds every choice of the model at a layout's. */
final class FixedLayout {
  private final Choice choice;
  private final Clock clock;
  private final IntVar cycle;

  FixedLayout(Choice choice, Clock clock, IntVar cycle) {
    this.choice = choice;
    this.clock = clock;
    this.cycle = cycle;
  }

  void fix(Layout layout) {
    ProblemTables tables = choice.tables;
    choice.model.addEquality(cycle, layout.cycleMs());
    for (int i = 0; i < tables.taskCount; i++) {
      Layout.Placement placement = layout.placements().get(i);
      fix(choice.onSlide[i][tables.slide(placement.slideId())]);
      fix(choice.inMode[i][placement.modeIndex()]);
      choice.model.addEquality(clock.start[i], placement.startMs());
      choice.model.addEquality(clock.end[i], placement.endMs());
    }
  }

  private void fix(@Nullable Literal literal) {
    if (literal == null) {
      BoolVar never = choice.model.newBoolVar("never");
      choice.model.addBoolAnd(new Literal[] {never, never.not()});
    } else {
      choice.model.addBoolAnd(new Literal[] {literal});
    }
  }
}
