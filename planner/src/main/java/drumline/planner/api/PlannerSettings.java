package drumline.planner.api;

/**
 * How long and with what the planner searches.
 *
 * @param searchS search effort in seconds of an unloaded machine, above 0 and at most 86400; the
 *     same effort, worker count and seed give the same layout
 * @param workerCount threads, 1 to 64
 * @param seed random seed, 0 or more
 */
public record PlannerSettings(double searchS, int workerCount, int seed) {
  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if the effort is not above 0 and at most 86400 (NaN fails),
   *     the worker count outside 1 to 64, or the seed negative
   */
  public PlannerSettings {
    if (!(searchS > 0 && searchS <= 86400)) {
      throw new IllegalArgumentException(
          "searchS is " + searchS + ", allowed: above 0, at most 86400");
    }
    if (workerCount < 1 || workerCount > 64) {
      throw new IllegalArgumentException("workerCount is " + workerCount + ", allowed: 1 to 64");
    }
    if (seed < 0) {
      throw new IllegalArgumentException("seed is " + seed + ", allowed: 0 or more");
    }
  }

  /** Ten seconds, two workers, seed 1. */
  public static PlannerSettings standard() {
    return new PlannerSettings(10, 2, 1);
  }
}
