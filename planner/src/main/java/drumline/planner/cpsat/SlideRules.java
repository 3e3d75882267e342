package drumline.planner.cpsat;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import drumline.planner.bound.PairSavings;
import drumline.planner.model.EquipmentRules;
import drumline.planner.model.Mode;
import drumline.planner.tables.ProblemTables;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToIntFunction;

/**
 * One thing at a time on a slide, loads of overlapping tasks inside the limit, equipment to buy.
 */
final class SlideRules {
  private final Choice choice;
  private final Clock clock;
  private final ProblemTables tables;

  private SlideRules(Choice choice, Clock clock) {
    this.choice = choice;
    this.clock = clock;
    tables = choice.tables;
  }

  static void add(Choice choice, Clock clock, PairSavings savings) {
    SlideRules rules = new SlideRules(choice, clock);
    for (int s = 0; s < rules.tables.slideCount(); s++) {
      rules.addSlide(s, savings);
    }
    for (int k = 0; k < rules.tables.stageCount; k++) {
      rules.addLoad(k, Mode::spindleSharePermille);
      rules.addLoad(k, Mode::gripSharePermille);
    }
  }

  /** Binds each option to its users and keeps the limits; the price of what is bought. */
  static LinearExpr addEquipment(Choice choice) {
    EquipmentRules equipment = choice.tables.problem.equipment();
    LinearExprBuilder price = LinearExpr.newBuilder();
    Map<String, LinearExprBuilder> countByKind = new TreeMap<>();
    for (EquipmentRules.Option option : equipment.options()) {
      BoolVar bought = choice.model.newBoolVar("option");
      int slide = choice.tables.slide(option.slideId());
      for (String id : option.taskIds()) {
        Literal here = choice.onSlide[choice.tables.task(id)][slide];
        if (here != null) {
          choice.model.addImplication(here, bought);
        }
      }
      price.addTerm(bought, option.priceMinor());
      countByKind.computeIfAbsent(option.kind(), k -> LinearExpr.newBuilder()).add(bought);
    }
    countByKind.forEach(
        (kind, count) -> {
          Integer most = equipment.mostByKind().get(kind);
          if (most != null) {
            choice.model.addLessOrEqual(count, most);
          }
        });
    return price.build();
  }

  private void addSlide(int slide, PairSavings savings) {
    List<IntervalVar> oneAtATime = new ArrayList<>();
    List<IntervalVar> withShift = new ArrayList<>();
    int stage = tables.stageOfSlide[slide];
    for (int i = 0; i < tables.taskCount; i++) {
      Literal here = choice.onSlide[i][slide];
      Literal inStage = choice.inStage[i][stage];
      if (inStage != null && savings.cutsAlone(i, stage)) {
        oneAtATime.add(interval(i, inStage, 0, "alone" + slide));
      } else if (here != null) {
        oneAtATime.add(interval(i, here, 0, "slide" + slide));
      }
      if (here != null && tables.shiftMs(slide) > 0) {
        withShift.add(interval(i, here, tables.shiftMs(slide), "shift" + slide));
      }
    }
    choice.model.addNoOverlap(oneAtATime);
    choice.model.addNoOverlap(withShift);
  }

  private IntervalVar interval(int task, Literal present, int shiftMs, String name) {
    return choice.model.newOptionalIntervalVar(
        clock.start[task],
        LinearExpr.affine(clock.duration[task], 1, shiftMs),
        LinearExpr.affine(clock.end[task], 1, shiftMs),
        present,
        name + "_" + task);
  }

  private void addLoad(int stage, ToIntFunction<Mode> share) {
    List<Integer> here = new ArrayList<>();
    for (int i = 0; i < tables.taskCount; i++) {
      if (choice.inStage[i][stage] != null && most(i, share) > 0) {
        here.add(i);
      }
    }
    if (here.stream().mapToInt(i -> most(i, share)).sum() <= Mode.FULL_PERMILLE) {
      return;
    }
    CumulativeConstraint load = choice.model.addCumulative(Mode.FULL_PERMILLE);
    for (int i : here) {
      Literal present = choice.inStage[i][stage];
      if (present != null) {
        IntVar demand = choice.model.newIntVar(0, Mode.FULL_PERMILLE, "load" + i);
        choice.model.addEquality(Clock.byMode(choice, i, share::applyAsInt), demand);
        load.addDemand(interval(i, present, 0, "load"), demand);
      }
    }
  }

  private int most(int task, ToIntFunction<Mode> share) {
    int most = 0;
    for (int m : tables.modesOf[task]) {
      most = Math.max(most, share.applyAsInt(tables.mode(task, m)));
    }
    return most;
  }
}
