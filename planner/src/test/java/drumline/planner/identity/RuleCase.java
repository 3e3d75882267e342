package drumline.planner.identity;

import drumline.planner.model.Layout;
import drumline.planner.model.PlanningProblem;

/**
 * One rule alone.
 *
 * @param check name of the audit's check
 * @param what what is broken, for the test's name
 * @param problem a problem with the rule
 * @param kept a layout that keeps it
 * @param broken a layout that breaks it and nothing else
 */
record RuleCase(String check, String what, PlanningProblem problem, Layout kept, Layout broken) {
  @Override
  public String toString() {
    return check + ": " + what;
  }
}
