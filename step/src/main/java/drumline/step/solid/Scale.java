package drumline.step.solid;

/**
 * What a file's numbers mean.
 *
 * @param lengthMm one unit of length in mm
 * @param angleRad one unit of angle in radians
 */
public record Scale(double lengthMm, double angleRad) {
  private static final double INCH_MM = 25.4;

  /** Whether lengths are in inches, feet or thousandths. */
  public boolean isInch() {
    for (double unit : new double[] {INCH_MM, 12 * INCH_MM, INCH_MM / 1000}) {
      if (Math.abs(lengthMm / unit - 1) < 1e-6) {
        return true;
      }
    }
    return false;
  }

  /** The same with a factor on lengths. */
  Scale times(double factor) {
    return new Scale(lengthMm * factor, angleRad);
  }
}
