package drumline.planner.cpsat;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import drumline.planner.bound.PairSavings;
import drumline.planner.tables.ProblemTables;
import java.util.ArrayList;
import java.util.List;

/**
 * What follows for the cycle from places alone, without a clock: each slide's work with all that
 * cuts alone in its position, and a position's work less what its pairs can save.
 */
final class LoadRules {
  private final Choice choice;
  private final ProblemTables tables;
  private final CpModel model;
  private final IntVar cycle;
  private final PairSavings savings;

  private LoadRules(Choice choice, IntVar cycle, PairSavings savings) {
    this.choice = choice;
    this.cycle = cycle;
    this.savings = savings;
    tables = choice.tables;
    model = choice.model;
  }

  static void add(Choice choice, IntVar cycle, PairSavings savings) {
    LoadRules rules = new LoadRules(choice, cycle, savings);
    for (int s = 0; s < rules.tables.slideCount(); s++) {
      if (rules.tables.stageOfSlide[s] < rules.tables.drumCount) {
        rules.addSlide(s);
      }
    }
    for (int k = 0; k < rules.tables.drumCount; k++) {
      if (savings.slidesIn(k) > 1) {
        rules.addPairs(k);
      }
    }
  }

  private LinearExpr working() {
    return LinearExpr.affine(cycle, 1, -tables.problem.indexMs());
  }

  private void addSlide(int slide) {
    int stage = tables.stageOfSlide[slide];
    LinearExprBuilder load = LinearExpr.newBuilder();
    int shiftMs = tables.shiftMs(slide);
    for (int i = 0; i < tables.taskCount; i++) {
      Literal here = choice.onSlide[i][slide];
      Literal inStage = choice.inStage[i][stage];
      if (inStage != null && savings.cutsAlone(i, stage)) {
        load.addTerm(inStage, tables.shortestMs(i));
      } else if (here != null) {
        load.addTerm(here, tables.shortestMs(i));
      }
    }
    model.addLessOrEqual(load, working());
    if (shiftMs > 0) {
      addShifts(slide, shiftMs);
    }
  }

  private void addShifts(int slide, int shiftMs) {
    LinearExprBuilder load = LinearExpr.newBuilder();
    for (int i = 0; i < tables.taskCount; i++) {
      Literal here = choice.onSlide[i][slide];
      if (here != null) {
        load.addTerm(here, tables.shortestMs(i) + (long) shiftMs);
      }
    }
    model.addLessOrEqual(load.add(-shiftMs), working());
  }

  private void addPairs(int stage) {
    int n = tables.taskCount;
    LinearExprBuilder load = LinearExpr.newBuilder();
    List<List<IntVar>> savedBy = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      savedBy.add(new ArrayList<>());
    }
    for (int i = 0; i < n; i++) {
      Literal first = choice.inStage[i][stage];
      if (first == null) {
        continue;
      }
      load.addTerm(first, tables.shortestMs(i));
      for (int j = i + 1; j < n; j++) {
        Literal second = choice.inStage[j][stage];
        int most = savings.savingMs(i, j, stage);
        if (second != null && most > 0) {
          IntVar saved = saved(first, second, most);
          load.addTerm(saved, -1);
          savedBy.get(i).add(saved);
          savedBy.get(j).add(saved);
        }
      }
    }
    model.addLessOrEqual(load, working());
    for (int i = 0; i < n && savings.slidesIn(stage) == 2; i++) {
      Literal here = choice.inStage[i][stage];
      if (here != null && savedBy.get(i).size() > 1) {
        LinearExpr sum = LinearExpr.sum(savedBy.get(i).toArray(new IntVar[0]));
        model.addLessOrEqual(sum, LinearExpr.term(here, tables.shortestMs(i)));
      }
    }
  }

  private IntVar saved(Literal first, Literal second, int mostMs) {
    IntVar saved = model.newIntVar(0, mostMs, "saved");
    model.addLessOrEqual(saved, LinearExpr.term(first, mostMs));
    model.addLessOrEqual(saved, LinearExpr.term(second, mostMs));
    return saved;
  }
}
