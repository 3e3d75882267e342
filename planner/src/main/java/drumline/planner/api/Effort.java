package drumline.planner.api;

import drumline.planner.cpsat.SolverEffort;

/**
 * Search effort in counts that do not depend on the clock.
 *
 * @param seedStepCount changes that the local search tries
 * @param solver the solver's share
 */
record Effort(int seedStepCount, SolverEffort solver) {
  private static final int LEAST_STEPS_PER_TASK = 1_500;
  private static final int STEPS_PER_TASK_AND_S = 3_000;
  private static final int MOST_STEPS = 3_000_000;

  static Effort of(PlannerSettings settings, int taskCount) {
    double perTask = LEAST_STEPS_PER_TASK + STEPS_PER_TASK_AND_S * settings.searchS();
    double steps = Math.min(MOST_STEPS, taskCount * perTask);
    double wallS = 2 * settings.searchS() + 2;
    return new Effort(
        (int) steps,
        new SolverEffort(settings.searchS(), wallS, settings.workerCount(), settings.seed()));
  }
}
