package drumline.planner.cpsat;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import drumline.planner.bound.PairSavings;
import drumline.planner.model.Layout;
import drumline.planner.tables.ProblemTables;
import java.util.Optional;
import java.util.function.ToLongFunction;

/** Searches for the layout with the shortest cycle and proves how short it can be. */
public final class LayoutSolver {
  /** The clock counts as the end a little before its time, since the solver stops before it. */
  private static final double WALL_SHARE = 0.98;

  private final CpModel model = new CpModel();
  private final Choice choice;
  private final Clock clock;
  private final IntVar cycle;

  /**
   * How a search ended.
   *
   * @param layout best layout found
   * @param lowerBoundMs no cycle can be shorter
   * @param isInfeasible true if it is proven that no layout keeps all rules
   * @param hitWallLimit true if the clock stopped the search before its work was done
   */
  public record Outcome(
      Optional<Layout> layout, int lowerBoundMs, boolean isInfeasible, boolean hitWallLimit) {}

  /** How strong the model is. */
  public enum Strength {
    /** The rules alone. */
    PLAIN,
    /** With loads that follow from places, for a better bound. */
    WITH_LOADS
  }

  /**
   * A model of a problem.
   *
   * @param tables the problem
   * @param lowerBoundMs a cycle that is known to be no longer than the shortest
   * @param horizonMs a cycle that is known to suffice
   * @param strength how strong the model is
   */
  public LayoutSolver(ProblemTables tables, int lowerBoundMs, int horizonMs, Strength strength) {
    PairSavings savings = new PairSavings(tables);
    choice = new Choice(tables, model);
    clock = new Clock(choice, horizonMs * spindles(tables));
    cycle = model.newIntVar(lowerBoundMs, horizonMs, "cycle");
    SlideRules.add(choice, clock, savings);
    OrderRules.add(choice, clock);
    CycleRules.add(choice, clock, cycle);
    if (strength == Strength.WITH_LOADS) {
      LoadRules.add(choice, cycle, savings);
    }
  }

  private static int spindles(ProblemTables tables) {
    return tables.problem.pickUp().map(p -> p.spindleCount()).orElse(1);
  }

  /** Starts the search from a layout. */
  public void hint(Layout layout) {
    new KnownLayout(choice, clock, cycle).give(layout);
  }

  /** True if the rules of the model admit a finished layout; the model is of no use afterwards. */
  public boolean admits(Layout layout, SolverEffort effort) {
    new KnownLayout(choice, clock, cycle).fix(layout);
    return run(effort, Watch.NONE).layout().isPresent();
  }

  /** Searches for the shortest cycle. */
  public Outcome solve(SolverEffort effort, Watch watch) {
    model.minimize(cycle);
    return run(effort, watch);
  }

  /** Searches for any layout. */
  public Outcome solveAny(SolverEffort effort, Watch watch) {
    return run(effort, watch);
  }

  private Outcome run(SolverEffort effort, Watch watch) {
    CpSolver solver = new CpSolver();
    SolverRun.configure(solver, effort);
    CpSolverStatus status = SolverRun.solve(solver, model, watch, this::read);
    boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    Optional<Layout> layout = found ? Optional.of(read(solver::value)) : Optional.empty();
    int bound = (int) Math.ceil(solver.bestObjectiveBound() - 1e-6);
    boolean wall =
        status != CpSolverStatus.OPTIMAL && solver.wallTime() >= WALL_SHARE * effort.wallS();
    return new Outcome(layout, bound, status == CpSolverStatus.INFEASIBLE, wall);
  }

  private Layout read(ToLongFunction<LinearArgument> values) {
    return new LayoutReader(choice, clock, cycle).read(values);
  }
}
