package drumline.guard.crooked.planner.audit;

import drumline.guard.crooked.planner.cpsat.Solver;

/** Breaks a rule: an audit that leans on what it audits. */
public record Auditor(Solver solver) {}
