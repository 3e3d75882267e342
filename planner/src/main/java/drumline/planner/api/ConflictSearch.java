package drumline.planner.api;

import drumline.planner.cpsat.LayoutSolver;
import drumline.planner.cpsat.SolverEffort;
import drumline.planner.cpsat.Watch;
import drumline.planner.model.PlanningProblem;
import drumline.planner.tables.OrderCircle;
import drumline.planner.tables.ProblemTables;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Supplier;

/**
 * Finds a small set of rules that cannot hold together: halves the rules again and again and keeps
 * those without which the rest could hold.
 *
 * <p>Source: U. Junker, QuickXplain, AAAI 2004 (from memory).
 */
final class ConflictSearch {
  private static final double LEAST_SEARCH_S = 5;
  private static final double TRIAL_S = 2;
  private final PlanningProblem problem;
  private final List<Rule> rules;
  private final SolverEffort trial;
  private final long untilMs;
  private final Supplier<String> solverFault;
  private boolean anyUndecided;
  private final TreeSet<String> notes = new TreeSet<>();

  ConflictSearch(PlanningProblem problem, PlannerSettings settings, Supplier<String> solverFault) {
    this.solverFault = solverFault;
    this.problem = problem;
    rules = RuleList.of(problem);
    untilMs =
        System.currentTimeMillis() + (long) (1000 * Math.max(LEAST_SEARCH_S, settings.searchS()));
    trial = new SolverEffort(TRIAL_S, 2 * TRIAL_S, settings.workerCount(), settings.seed());
  }

  /** The rules in conflict, in plain words. */
  List<String> find() {
    Optional<String> shortage = SeatShortage.find(new ProblemTables(problem));
    if (shortage.isPresent() && Places.everyTaskHasOne(new ProblemTables(problem))) {
      return List.of(shortage.orElseThrow());
    }
    if (!canHold(List.of())) {
      return List.of(
          "the cut-off, the slides' positions and the tasks' modes leave no place even without any other rule");
    }
    List<Rule> conflict = explain(List.of(), false, rules);
    if (anyUndecided) {
      notes.add(
          "The time was too short to check each rule; the list may be longer than it need be.");
    }
    return conflict.stream().map(Rule::words).toList();
  }

  List<String> notes() {
    return List.copyOf(notes);
  }

  private List<Rule> explain(List<Rule> background, boolean grown, List<Rule> candidates) {
    if (grown && !canHold(background)) {
      return List.of();
    }
    if (candidates.size() <= 1) {
      return candidates;
    }
    int half = candidates.size() / 2;
    List<Rule> first = candidates.subList(0, half);
    List<Rule> second = candidates.subList(half, candidates.size());
    List<Rule> fromSecond = explain(joined(background, first), !first.isEmpty(), second);
    List<Rule> fromFirst = explain(joined(background, fromSecond), !fromSecond.isEmpty(), first);
    return joined(fromFirst, fromSecond);
  }

  private static List<Rule> joined(List<Rule> first, List<Rule> second) {
    List<Rule> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }

  /** False only if it is sure that the kept rules cannot hold together. */
  private boolean canHold(List<Rule> kept) {
    PlanningProblem relaxed = problem;
    for (Rule rule : rules) {
      if (!kept.contains(rule)) {
        relaxed = rule.without().apply(relaxed);
      }
    }
    ProblemTables tables = new ProblemTables(relaxed);
    if (!OrderCircle.find(tables).isEmpty() || !Places.everyTaskHasOne(tables)) {
      return false;
    }
    if (!solverFault.get().isEmpty()) {
      notes.add(solverFault.get());
      anyUndecided = true;
      return true;
    }
    if (System.currentTimeMillis() > untilMs) {
      anyUndecided = true;
      return true;
    }
    LayoutSolver solver =
        new LayoutSolver(tables, 0, tables.horizonMs(), LayoutSolver.Strength.PLAIN);
    LayoutSolver.Outcome outcome = solver.solveAny(trial, Watch.NONE);
    anyUndecided |= outcome.layout().isEmpty() && !outcome.isInfeasible();
    return !outcome.isInfeasible();
  }
}
