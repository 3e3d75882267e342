package drumline.planner.api;

import drumline.planner.cpsat.SolverEffort;

/**
 * Search effort in counts that do not depend on the clock.
 *
 * @param firstStepCount changes that the local search tries at first
 * @param seedStepCount changes that it tries once the search by stages has not settled it
 * @param setCount sets of tasks that the search by stages looks at
 * @param solver the solver's share
 */
record Effort(int firstStepCount, int seedStepCount, int setCount, SolverEffort solver) {
  private static final int FIRST_STEPS_PER_TASK = 10_000;
  private static final int LEAST_STEPS_PER_TASK = 1_500;
  private static final int STEPS_PER_TASK_AND_S = 3_000;
  private static final int LEAST_SETS = 2_000;
  private static final int SETS_PER_S = 1_000;
  private static final int MOST_SETS = 60_000;
  private static final double SOLVER_SHARE = 0.4;
  private static final int MOST_STEPS = 3_000_000;

  static Effort of(PlannerSettings settings, int taskCount) {
    double perTask = LEAST_STEPS_PER_TASK + STEPS_PER_TASK_AND_S * settings.searchS();
    double steps = Math.min(MOST_STEPS, taskCount * perTask);
    double wallS = 2 * settings.searchS() + 2;
    return new Effort(
        (int) Math.min(taskCount * (long) FIRST_STEPS_PER_TASK, (long) steps),
        (int) steps,
        (int) Math.min(MOST_SETS, LEAST_SETS + SETS_PER_S * settings.searchS()),
        new SolverEffort(
            SOLVER_SHARE * settings.searchS(), wallS, settings.workerCount(), settings.seed()));
  }
}
