package drumline.bench.measure;

/**
 * How much is measured: a full run, or a share of it on a busy machine.
 *
 * @param searchS search effort for each instance, in seconds of an unloaded machine
 * @param mostCount most instances of each kind
 */
public record Sample(double searchS, int mostCount) {
  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if the effort is not above 0 (NaN fails) or the count below 1
   */
  public Sample {
    if (!(searchS > 0)) {
      throw new IllegalArgumentException("searchS is " + searchS + ", allowed: above 0");
    }
    if (mostCount < 1) {
      throw new IllegalArgumentException("mostCount is " + mostCount + ", allowed: 1 or more");
    }
  }
}
