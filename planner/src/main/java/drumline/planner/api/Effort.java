package drumline.planner.api;

import drumline.planner.cpsat.SolverEffort;

/**
 * Search effort in counts that do not depend on the clock.
 *
 * @param seedStepCount changes that the local search tries
 * @param solver the solver's share
 */
record Effort(int seedStepCount, SolverEffort solver) {
  private static final int LEAST_STEPS = 60_000;
  private static final int STEPS_PER_S = 100_000;
  private static final int MOST_STEPS = 3_000_000;

  static Effort of(PlannerSettings settings, int taskCount) {
    double steps = Math.min(MOST_STEPS, LEAST_STEPS + STEPS_PER_S * settings.searchS());
    double wallS = 2 * settings.searchS() + 2;
    return new Effort(
        (int) steps,
        new SolverEffort(settings.searchS(), wallS, settings.workerCount(), settings.seed()));
  }
}
