package drumline.planner.api;

import drumline.planner.audit.AuditReport;
import drumline.planner.audit.ModelAudit;
import drumline.planner.bound.CycleBound;
import drumline.planner.cpsat.LayoutSolver;
import drumline.planner.cpsat.SolverEffort;
import drumline.planner.cpsat.SolverLibrary;
import drumline.planner.cpsat.Watch;
import drumline.planner.model.Layout;
import drumline.planner.model.PlanningProblem;
import drumline.planner.seed.SeedSearch;
import drumline.planner.stage.ColumnBound;
import drumline.planner.stage.StagePlan;
import drumline.planner.tables.OrderCircle;
import drumline.planner.tables.ProblemTables;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * Finds the layout with the shortest cycle and says how far from the best possible it can be.
 *
 * <p>A local search gives the first layouts within a fraction of a second; a constraint solver
 * improves them and proves a bound. The same problem and settings give the same layout, unless the
 * clock or a cancel stopped the search, which a note then says.
 */
public final class Planner {
  private static final double CHEAPEST_SHARE = 0.1;

  /** The clock must not end what the effort should end, even on a busy machine. */
  private static final double CHEAPEST_WALL = 20;

  private Planner() {}

  /** Plans. */
  public static PlanningResult plan(
      PlanningProblem problem, PlannerSettings settings, ProgressListener listener, Cancel cancel) {
    return plan(problem, settings, listener, cancel, SolverLibrary::faultText);
  }

  /** Plans with a solver that may be missing: its fault in a sentence, empty if it can be used. */
  static PlanningResult plan(
      PlanningProblem problem,
      PlannerSettings settings,
      ProgressListener listener,
      Cancel cancel,
      Supplier<String> solverFault) {
    Search search = new Search(listener, cancel, problem.equipment()::areKept);
    ProblemTables tables = new ProblemTables(problem);
    if (!OrderCircle.find(tables).isEmpty()
        || !Places.everyTaskHasOne(tables)
        || SeatShortage.find(tables).isPresent()) {
      return infeasible(problem, search, settings, solverFault);
    }
    search.bound(CycleBound.of(tables).cycleMs());
    Effort effort = Effort.of(settings, tables.taskCount);
    SeedSearch seed = new SeedSearch(tables, settings.seed());
    seed.search(effort.firstStepCount(), search::layout, cancel::isCancelled);
    fillStages(tables, effort, search);
    if (!search.isProven()) {
      seed.search(effort.seedStepCount(), search::layout, cancel::isCancelled);
    }
    List<String> notes = new ArrayList<>();
    boolean infeasible = false;
    if (!search.isProven() && !cancel.isCancelled()) {
      String fault = solverFault.get();
      if (fault.isEmpty()) {
        infeasible = solve(tables, effort, search, notes);
      } else {
        notes.add(
            fault
                + ". The layout comes from the local search alone; how much better another could be"
                + " is known by the simple bounds only.");
      }
    }
    return infeasible
        ? infeasible(problem, search, settings, solverFault)
        : result(problem, search, notes);
  }

  /**
   * A layout with the same cycle whose equipment costs less, or the layout itself.
   *
   * @param layout a layout that keeps all rules
   * @param settings effort of the search, of which a quarter is spent
   */
  public static Layout cheapest(PlanningProblem problem, Layout layout, PlannerSettings settings) {
    long priceMinor = problem.equipment().priceMinor(layout);
    if (priceMinor == 0 || !SolverLibrary.faultText().isEmpty()) {
      return layout;
    }
    ProblemTables tables = new ProblemTables(problem);
    double workS = settings.searchS() * CHEAPEST_SHARE;
    LayoutSolver solver =
        new LayoutSolver(tables, 0, layout.cycleMs(), LayoutSolver.Strength.PLAIN);
    solver.hint(layout);
    SolverEffort effort =
        new SolverEffort(
            workS, CHEAPEST_WALL * workS + 10, settings.workerCount(), settings.seed());
    return solver
        .solveCheapest(effort, Watch.NONE)
        .layout()
        .filter(found -> problem.equipment().priceMinor(found) < priceMinor)
        .filter(found -> ModelAudit.of(problem, found).isPassed())
        .orElse(layout);
  }

  private static void fillStages(ProblemTables tables, Effort effort, Search search) {
    if (search.best().isEmpty() || search.isProven() || search.isCancelled()) {
      return;
    }
    search.bound(ColumnBound.forcedCycleMs(tables, search.best().orElseThrow().cycleMs()));
    if (StagePlan.isSuited(tables) && !search.isProven()) {
      StagePlan.Outcome outcome =
          StagePlan.close(
              tables,
              search.best().orElseThrow(),
              search.lowerBoundMs(),
              effort.setCount(),
              search::layout,
              search::isCancelled);
      search.bound(outcome.lowerBoundMs());
    }
    if (!search.isProven() && !search.isCancelled()) {
      int horizonMs = search.best().orElseThrow().cycleMs();
      ColumnBound.findCycleMs(tables, horizonMs, effort.setCount(), search::isCancelled)
          .ifPresent(search::bound);
    }
  }

  private static boolean solve(
      ProblemTables tables, Effort effort, Search search, List<String> notes) {
    int horizonMs = search.best().map(Layout::cycleMs).orElse(tables.horizonMs());
    LayoutSolver solver =
        new LayoutSolver(
            tables, search.lowerBoundMs(), horizonMs, LayoutSolver.Strength.WITH_LOADS);
    search.best().ifPresent(solver::hint);
    LayoutSolver.Outcome outcome = solver.solve(effort.solver(), search);
    outcome.layout().ifPresent(search::layout);
    if (!outcome.isInfeasible()) {
      search.bound(outcome.lowerBoundMs());
    }
    if (outcome.hitWallLimit()) {
      notes.add(
          "The clock stopped the search before its work was done; another run may end with another"
              + " layout.");
    }
    if (outcome.isInfeasible() && search.best().isPresent()) {
      notes.add(
          "The solver refuses the layout that the local search found; trust the audit, and report"
              + " this.");
      return false;
    }
    return outcome.isInfeasible();
  }

  private static PlanningResult result(PlanningProblem problem, Search search, List<String> notes) {
    if (search.isCancelled()) {
      notes.add("The search was stopped by hand.");
    }
    if (search.best().isEmpty()) {
      return new PlanningResult.Undecided(search.lowerBoundMs(), search.elapsedMs(), notes);
    }
    Layout layout = search.best().orElseThrow();
    AuditReport audit = ModelAudit.of(problem, layout);
    return new PlanningResult.Planned(
        layout,
        layout.cycleMs(),
        search.lowerBoundMs(),
        search.isProven(),
        search.elapsedMs(),
        audit,
        notes);
  }

  private static PlanningResult infeasible(
      PlanningProblem problem,
      Search search,
      PlannerSettings settings,
      Supplier<String> solverFault) {
    ConflictSearch conflicts = new ConflictSearch(problem, settings, solverFault);
    List<String> words = conflicts.find();
    return new PlanningResult.Infeasible(words, search.elapsedMs(), conflicts.notes());
  }
}
