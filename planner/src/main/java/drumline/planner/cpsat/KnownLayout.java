package drumline.planner.cpsat;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.Literal;
import drumline.planner.model.Layout;
import drumline.planner.tables.ProblemTables;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Brings a known layout into the model: as a hint, or as the only choice. */
final class KnownLayout {
  private final Choice choice;
  private final Clock clock;
  private final IntVar cycle;
  private final Set<Integer> hinted = new HashSet<>();

  KnownLayout(Choice choice, Clock clock, IntVar cycle) {
    this.choice = choice;
    this.clock = clock;
    this.cycle = cycle;
  }

  /** Tells the solver where to begin. */
  void give(Layout layout) {
    ProblemTables tables = choice.tables;
    for (int i = 0; i < tables.taskCount; i++) {
      Layout.Placement placement = layout.placements().get(i);
      int slide = tables.slide(placement.slideId());
      giveChoice(choice.onSlide[i], slide);
      giveChoice(choice.inStage[i], tables.stageOfSlide[slide]);
      giveChoice(choice.inMode[i], placement.modeIndex());
      choice.model.addHint(clock.start[i], placement.startMs());
      choice.model.addHint(clock.end[i], placement.endMs());
      choice.model.addHint(clock.duration[i], (long) placement.endMs() - placement.startMs());
    }
    choice.model.addHint(cycle, layout.cycleMs());
  }

  private void giveChoice(@Nullable Literal[] literals, int chosen) {
    for (int c = 0; c < literals.length; c++) {
      Literal literal = literals[c];
      if (literal != null && hinted.add(literal.getIndex())) {
        choice.model.addHint(literal, c == chosen);
      }
    }
  }

  /** Leaves no other choice. */
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
