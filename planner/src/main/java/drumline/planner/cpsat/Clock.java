package drumline.planner.cpsat;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import drumline.planner.model.Mode;
import drumline.planner.tables.ProblemTables;
import java.util.function.ToLongFunction;

/** When each task starts and ends, in ms after the index (or the pick-up spindle's retract). */
final class Clock {
  final ProblemTables tables;
  final CpModel model;
  final IntVar[] start;
  final IntVar[] duration;
  final IntVar[] end;

  Clock(Choice choice, int horizonMs) {
    tables = choice.tables;
    model = choice.model;
    int n = tables.taskCount;
    start = new IntVar[n];
    duration = new IntVar[n];
    end = new IntVar[n];
    for (int i = 0; i < n; i++) {
      start[i] = model.newIntVar(0, horizonMs, "start" + i);
      end[i] = model.newIntVar(0, horizonMs, "end" + i);
      duration[i] = model.newIntVar(0, horizonMs, "duration" + i);
      model.addEquality(LinearExpr.newBuilder().add(start[i]).add(duration[i]), end[i]);
      model.addEquality(byMode(choice, i, Mode::durationMs), duration[i]);
      addRelease(choice, i);
    }
  }

  /** A quantity of the chosen mode as a sum over the task's modes. */
  static LinearExprBuilder byMode(Choice choice, int task, ToLongFunction<Mode> quantity) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (int m : choice.tables.modesOf[task]) {
      Literal literal = choice.inMode[task][m];
      if (literal != null) {
        sum.addTerm(literal, quantity.applyAsLong(choice.tables.mode(task, m)));
      }
    }
    return sum;
  }

  private void addRelease(Choice choice, int task) {
    for (int m : tables.modesOf[task]) {
      Literal inMode = choice.inMode[task][m];
      for (int k = 0; k < tables.stageCount && inMode != null; k++) {
        Literal inStage = choice.inStage[task][k];
        int releaseMs = tables.releaseMs(k, tables.mode(task, m));
        if (releaseMs > 0 && inStage != null) {
          model
              .addGreaterOrEqual(start[task], releaseMs)
              .onlyEnforceIf(new Literal[] {inMode, inStage});
        }
      }
    }
  }
}
