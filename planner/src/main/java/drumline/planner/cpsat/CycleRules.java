package drumline.planner.cpsat;

import com.google.ortools.sat.Constraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import drumline.planner.model.PickUp;
import drumline.planner.tables.ProblemTables;
import org.jspecify.annotations.Nullable;

/** What the cycle must hold: every task, the cut-off with bar feed, the pick-up's round trip. */
final class CycleRules {
  private CycleRules() {}

  static void add(Choice choice, Clock clock, IntVar cycle) {
    ProblemTables tables = choice.tables;
    for (int i = 0; i < tables.taskCount; i++) {
      addEnd(choice, clock, cycle, i);
    }
    if (tables.cutTask >= 0) {
      addCutOff(choice, clock, cycle);
    }
    tables.problem.pickUp().ifPresent(pickUp -> addRoundTrip(choice, clock, cycle, pickUp));
  }

  private static void addEnd(Choice choice, Clock clock, IntVar cycle, int task) {
    ProblemTables tables = choice.tables;
    LinearExpr needed = LinearExpr.affine(clock.end[task], 1, tables.problem.indexMs());
    Literal back = back(choice, task);
    if (back == null) {
      choice.model.addGreaterOrEqual(cycle, needed);
    } else {
      choice.model.addGreaterOrEqual(cycle, needed).onlyEnforceIf(back.not());
    }
  }

  private static @Nullable Literal back(Choice choice, int task) {
    return choice.tables.stageCount > choice.tables.drumCount
        ? choice.inStage[task][choice.tables.drumCount]
        : null;
  }

  private static void addCutOff(Choice choice, Clock clock, IntVar cycle) {
    ProblemTables tables = choice.tables;
    CpModel model = choice.model;
    int cut = tables.cutTask;
    int last = tables.drumCount - 1;
    model.addGreaterOrEqual(clock.start[cut], tables.gripMs());
    model.addGreaterOrEqual(
        cycle,
        LinearExpr.affine(clock.end[cut], 1, tables.barFeedMs() + (long) tables.problem.indexMs()));
    for (int i = 0; i < tables.taskCount; i++) {
      Literal here = choice.inStage[i][last];
      if (i != cut && here != null) {
        IntVar limit = tables.overlapsCut[i] ? clock.end[cut] : clock.start[cut];
        model.addLessOrEqual(clock.end[i], limit).onlyEnforceIf(here);
      }
    }
  }

  private static void addRoundTrip(Choice choice, Clock clock, IntVar cycle, PickUp pickUp) {
    for (int i = 0; i < choice.tables.taskCount; i++) {
      Literal back = back(choice, i);
      if (back != null) {
        roundTrip(choice, clock, cycle, pickUp, LinearExpr.newBuilder().add(clock.end[i]))
            .onlyEnforceIf(back);
      }
    }
    roundTrip(choice, clock, cycle, pickUp, LinearExpr.newBuilder());
  }

  private static Constraint roundTrip(
      Choice choice, Clock clock, IntVar cycle, PickUp pickUp, LinearExprBuilder backEnd) {
    LinearExprBuilder trip =
        backEnd.add(clock.duration[choice.tables.cutTask]).add(pickUp.carryMs());
    return choice.model.addLessOrEqual(trip, LinearExpr.term(cycle, pickUp.spindleCount()));
  }
}
