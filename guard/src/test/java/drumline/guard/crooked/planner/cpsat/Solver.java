package drumline.guard.crooked.planner.cpsat;

import com.google.ortools.sat.CpModel;

/** Breaks none: the solver's package is where its library belongs. */
public record Solver(CpModel model) {}
