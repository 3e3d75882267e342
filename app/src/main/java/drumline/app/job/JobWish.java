package drumline.app.job;

import java.util.List;

/**
 * A wish to plan.
 *
 * @param inquiryId the inquiry
 * @param machines machines; empty for those of the wishes, else the best fit
 * @param seconds effort for each machine, above 0 to 3600
 * @param seed random seed, 0 or more
 */
public record JobWish(String inquiryId, List<String> machines, double seconds, int seed) {
  private static final double MOST_S = 3600;

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if effort or seed are outside their range
   */
  public JobWish {
    machines = List.copyOf(machines);
    if (!(seconds > 0 && seconds <= MOST_S)) {
      throw new IllegalArgumentException("seconds: " + seconds + ", allowed: above 0 to " + MOST_S);
    }
    if (seed < 0) {
      throw new IllegalArgumentException("seed: " + seed + ", allowed: 0 or more");
    }
  }
}
