package drumline.planner.cpsat;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import drumline.planner.model.Mode;
import drumline.planner.model.PairRule;
import drumline.planner.model.SpindleCondition;
import drumline.planner.model.SpindleRules;
import drumline.planner.tables.ProblemTables;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Pairs of tasks in one position: one after the other with the change of spindle condition between
 * them, or together where their conditions agree.
 */
final class OrderRules {
  private final Choice choice;
  private final Clock clock;
  private final ProblemTables tables;
  private final CpModel model;
  private final boolean[][] notOverlap;

  /**
   * By earlier and later task: true where they stand in one position in this order; may be null.
   */
  final @Nullable Literal[][] inOrder;

  private OrderRules(Choice choice, Clock clock) {
    this.choice = choice;
    this.clock = clock;
    tables = choice.tables;
    model = choice.model;
    notOverlap = new boolean[tables.taskCount][tables.taskCount];
    inOrder = new Literal[tables.taskCount][tables.taskCount];
    for (int[] pair : tables.pairs(PairRule.Kind.MUST_NOT_OVERLAP)) {
      notOverlap[pair[0]][pair[1]] = true;
      notOverlap[pair[1]][pair[0]] = true;
    }
  }

  static OrderRules add(Choice choice, Clock clock) {
    OrderRules rules = new OrderRules(choice, clock);
    int n = rules.tables.taskCount;
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        rules.addGroup(i, j, 0, rules.tables.drumCount);
        rules.addGroup(i, j, rules.tables.drumCount, rules.tables.stageCount);
      }
    }
    for (ProblemTables.Arc arc : rules.tables.arcs) {
      rules.addLag(arc);
    }
    return rules;
  }

  private void addLag(ProblemTables.Arc arc) {
    for (int k = 0; k < tables.stageCount; k++) {
      Literal before = choice.inStage[arc.before()][k];
      Literal after = choice.inStage[arc.after()][k];
      if (before != null && after != null) {
        model
            .addGreaterOrEqual(
                clock.start[arc.after()],
                LinearExpr.affine(clock.end[arc.before()], 1, arc.lagMs()))
            .onlyEnforceIf(new Literal[] {before, after});
      }
    }
  }

  private void addGroup(int i, int j, int fromStage, int toStage) {
    if (fromStage == toStage || !needsRule(i, j, fromStage)) {
      return;
    }
    Literal same = sameStage(i, j, fromStage, toStage);
    if (same == null) {
      return;
    }
    List<Literal> ways = new ArrayList<>(List.of(same.not()));
    boolean fixed = tables.precedes[i][j] || tables.precedes[j][i] || cutOrder(i, j, fromStage);
    if (!tables.precedes[j][i] && !(fixed && isCutFirst(i, j))) {
      ways.add(ordered(i, j, same, tables.spindle(fromStage)));
    }
    if (!tables.precedes[i][j] && !(fixed && isCutFirst(j, i))) {
      ways.add(ordered(j, i, same, tables.spindle(fromStage)));
    }
    if (!fixed && !notOverlap[i][j]) {
      together(i, j, tables.spindle(fromStage)).ifPresent(ways::add);
    }
    model.addBoolOr(ways.toArray(new Literal[0]));
  }

  private boolean cutOrder(int i, int j, int fromStage) {
    return fromStage == 0
        && ((i == tables.cutTask && !tables.overlapsCut[j])
            || (j == tables.cutTask && !tables.overlapsCut[i]));
  }

  private boolean isCutFirst(int first, int second) {
    return first == tables.cutTask && !tables.overlapsCut[second];
  }

  /** False where any overlap is fine, or the slides' own rule says it all. */
  private boolean needsRule(int i, int j, int stage) {
    SpindleRules spindle = tables.spindle(stage);
    boolean always = !notOverlap[i][j];
    boolean gaps = false;
    for (int a : tables.modesOf[i]) {
      for (int b : tables.modesOf[j]) {
        Mode first = tables.mode(i, a);
        Mode second = tables.mode(j, b);
        always &= spindle.canOverlap(first, second);
        gaps |= spindle.changeMs(first, second) > 0 || spindle.changeMs(second, first) > 0;
      }
    }
    return gaps || (!always && canStandOnTwoSlides(i, j));
  }

  private boolean canStandOnTwoSlides(int i, int j) {
    for (int s : tables.slidesOf[i]) {
      for (int t : tables.slidesOf[j]) {
        if (s != t && tables.stageOfSlide[s] == tables.stageOfSlide[t]) {
          return true;
        }
      }
    }
    return false;
  }

  private @Nullable Literal sameStage(int i, int j, int fromStage, int toStage) {
    BoolVar same = null;
    for (int k = fromStage; k < toStage; k++) {
      Literal first = choice.inStage[i][k];
      Literal second = choice.inStage[j][k];
      if (first != null && second != null) {
        same = same == null ? model.newBoolVar("same" + i + "_" + j) : same;
        model.addBoolOr(new Literal[] {first.not(), second.not(), same});
      }
    }
    return same;
  }

  private Literal ordered(int earlier, int later, Literal same, SpindleRules spindle) {
    BoolVar order = model.newBoolVar("order" + earlier + "_" + later);
    inOrder[earlier][later] = order;
    model.addGreaterOrEqual(clock.start[later], clock.end[earlier]).onlyEnforceIf(order);
    model.addImplication(order, same);
    if (spindle.runUpRevPerMinPerS() > 0 || spindle.orientMs() > 0) {
      addChange(earlier, later, order, spindle);
    }
    return order;
  }

  /**
   * acc · (start − end) ≥ 1000 · (n_a − n_b) + acc · orient · (later stands − earlier stands), and
   * ≥ 1000 · (n_b − n_a): with whole ms this is the rounded-up change time.
   */
  private void addChange(int earlier, int later, BoolVar order, SpindleRules spindle) {
    long acc = Math.max(1, spindle.runUpRevPerMinPerS());
    long perRev = spindle.runUpRevPerMinPerS() == 0 ? 0 : 1000;
    List<Literal> condition = new ArrayList<>(List.of(order));
    anyMode(earlier).ifPresent(any -> condition.add(any.not()));
    anyMode(later).ifPresent(any -> condition.add(any.not()));
    Literal[] enforced = condition.toArray(new Literal[0]);
    for (int sign = -1; sign <= 1; sign += 2) {
      LinearExprBuilder slack = LinearExpr.newBuilder();
      slack.addTerm(clock.start[later], acc).addTerm(clock.end[earlier], -acc);
      long slope = sign * perRev;
      long orient = sign < 0 ? acc * spindle.orientMs() : 0;
      slack.add(
          Clock.byMode(
              choice,
              earlier,
              m -> slope * m.revPerMin() + (m.condition().standsStill() ? orient : 0)));
      slack.add(
          Clock.byMode(
              choice,
              later,
              m -> -slope * m.revPerMin() - (m.condition().standsStill() ? orient : 0)));
      model.addGreaterOrEqual(slack, 0).onlyEnforceIf(enforced);
    }
  }

  private Optional<Literal> anyMode(int task) {
    List<Literal> any = new ArrayList<>();
    for (int m : tables.modesOf[task]) {
      Literal literal = choice.inMode[task][m];
      if (literal != null && tables.mode(task, m).condition() == SpindleCondition.ANY) {
        any.add(literal);
      }
    }
    if (any.isEmpty()) {
      return Optional.empty();
    }
    BoolVar isAny = model.newBoolVar("any" + task);
    model.addEquality(LinearExpr.sum(any.toArray(new Literal[0])), isAny);
    return Optional.of(isAny);
  }

  private Optional<Literal> together(int i, int j, SpindleRules spindle) {
    BoolVar together = model.newBoolVar("together" + i + "_" + j);
    boolean possible = addAgreement(together, i, j, spindle);
    addAgreement(together, j, i, spindle);
    return possible ? Optional.of(together) : Optional.empty();
  }

  private boolean addAgreement(BoolVar together, int i, int j, SpindleRules spindle) {
    boolean possible = false;
    for (int a : tables.modesOf[i]) {
      List<Literal> clause = new ArrayList<>(List.of(together.not()));
      Literal mode = choice.inMode[i][a];
      if (mode != null) {
        clause.add(mode.not());
      }
      for (int b : tables.modesOf[j]) {
        Literal partner = choice.inMode[j][b];
        if (partner != null && spindle.canOverlap(tables.mode(i, a), tables.mode(j, b))) {
          clause.add(partner);
          possible = true;
        }
      }
      model.addBoolOr(clause.toArray(new Literal[0]));
    }
    return possible;
  }
}
