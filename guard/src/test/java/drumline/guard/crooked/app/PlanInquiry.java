package drumline.guard.crooked.app;

import com.google.ortools.sat.CpSolver;
import drumline.guard.crooked.planner.cpsat.Solver;

/** Breaks two rules: sees inside the planner, and its library. */
public record PlanInquiry(Solver solver, CpSolver library) {}
