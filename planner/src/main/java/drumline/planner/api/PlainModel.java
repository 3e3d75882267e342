package drumline.planner.api;

import drumline.planner.cpsat.LayoutSolver;
import drumline.planner.cpsat.SolverEffort;
import drumline.planner.cpsat.SolverLibrary;
import drumline.planner.cpsat.Watch;
import drumline.planner.model.PlanningProblem;
import drumline.planner.tables.ProblemTables;

/** The constraint model with the rules alone, from nothing: what measurements are held against. */
public final class PlainModel {
  private PlainModel() {}

  /**
   * The bound that the plain model proves.
   *
   * @param mostS time after which it gives up, above 0
   * @return bound on the cycle in ms; the shortest cycle itself where it was proven in time
   * @throws IllegalStateException if the solver is missing
   */
  public static int lowerBoundMs(PlanningProblem problem, double mostS) {
    String fault = SolverLibrary.faultText();
    if (!fault.isEmpty()) {
      throw new IllegalStateException(fault);
    }
    ProblemTables tables = new ProblemTables(problem);
    return new LayoutSolver(tables, 0, tables.horizonMs(), LayoutSolver.Strength.PLAIN)
        .solve(new SolverEffort(mostS, mostS, 2, 1), Watch.NONE)
        .lowerBoundMs();
  }
}
