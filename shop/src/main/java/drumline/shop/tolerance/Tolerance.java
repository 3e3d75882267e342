package drumline.shop.tolerance;

import java.util.OptionalInt;

/**
 * What a size may deviate from its nominal.
 *
 * @param text the tolerance as written on the print
 * @param lowerDeviationMm smallest size less nominal, mm; finite
 * @param upperDeviationMm largest size less nominal, mm; above lowerDeviationMm
 * @param itGrade grade of an ISO 286 code, 1 to 18; empty where the print gives no code
 */
public record Tolerance(
    String text, double lowerDeviationMm, double upperDeviationMm, OptionalInt itGrade) {

  /** Slack for comparing widths that are the same but for binary rounding, mm. */
  private static final double ROUNDING_MM = 1e-9;

  /**
   * Checks the deviations.
   *
   * @throws IllegalArgumentException if a deviation is NaN or infinite, or the lower one is not
   *     below the upper one
   */
  public Tolerance {
    if (!Double.isFinite(lowerDeviationMm)) {
      throw new IllegalArgumentException(
          "lowerDeviationMm is " + lowerDeviationMm + "; allowed: finite numbers");
    }
    if (!(upperDeviationMm > lowerDeviationMm) || Double.isInfinite(upperDeviationMm)) {
      throw new IllegalArgumentException(
          "upperDeviationMm is " + upperDeviationMm + "; allowed: above " + lowerDeviationMm);
    }
  }

  /** Largest size less smallest size, mm. */
  public double widthMm() {
    return upperDeviationMm - lowerDeviationMm;
  }

  /** Smallest allowed size of a nominal size, mm. */
  public double lowerLimitMm(double nominalMm) {
    return nominalMm + lowerDeviationMm;
  }

  /** Largest allowed size of a nominal size, mm. */
  public double upperLimitMm(double nominalMm) {
    return nominalMm + upperDeviationMm;
  }

  /** Middle between the limits of a nominal size, mm; where a tool is set. */
  public double middleMm(double nominalMm) {
    return nominalMm + (lowerDeviationMm + upperDeviationMm) / 2;
  }

  /**
   * The coarsest standard grade that is not wider than this tolerance, so the work it takes.
   *
   * @param nominalMm nominal size, above 0 to 500 mm
   * @return 1 to 18; empty if the tolerance is finer than IT1 or the size is outside the table
   */
  public OptionalInt nearestItGrade(double nominalMm) {
    for (int grade = StandardTolerance.COARSEST; grade >= StandardTolerance.FINEST; grade--) {
      var width = StandardTolerance.findWidthMm(grade, nominalMm);
      if (width.isPresent() && width.getAsDouble() <= widthMm() + ROUNDING_MM) {
        return OptionalInt.of(grade);
      }
    }
    return OptionalInt.empty();
  }
}
