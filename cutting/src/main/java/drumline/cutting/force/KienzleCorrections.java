package drumline.cutting.force;

import drumline.cutting.validity.Require;

/**
 * The factors by which the tabled specific force is corrected for the cut at hand.
 *
 * <p>K = Kγ·Kv·Kver·Kst.
 *
 * <p>Source: [TSCH] Dietrich and Tschätsch, 11th edition, correction factors.
 *
 * @param rakeRatio Kγ for the rake, see {@link RakeCorrection}, above 0
 * @param speedRatio Kv for the cutting speed, see {@link SpeedCorrection}, above 0
 * @param wearRatio Kver for the worn edge, see {@link EdgeWear}, above 0
 * @param compressionRatio Kst for the crowded chip, see {@link ChipCompression}, above 0
 */
public record KienzleCorrections(
    double rakeRatio, double speedRatio, double wearRatio, double compressionRatio) {
  /** No correction: all factors are one. */
  public static final KienzleCorrections NONE = new KienzleCorrections(1, 1, 1, 1);

  /**
   * @throws IllegalArgumentException if a factor is not above 0
   */
  public KienzleCorrections {
    Require.positive("rakeRatio", rakeRatio);
    Require.positive("speedRatio", speedRatio);
    Require.positive("wearRatio", wearRatio);
    Require.positive("compressionRatio", compressionRatio);
  }

  /** All factors multiplied. */
  public double productRatio() {
    return rakeRatio * speedRatio * wearRatio * compressionRatio;
  }

  /** The same with another rake factor. */
  public KienzleCorrections withRakeRatio(double newRakeRatio) {
    return new KienzleCorrections(newRakeRatio, speedRatio, wearRatio, compressionRatio);
  }

  /** The same with another speed factor. */
  public KienzleCorrections withSpeedRatio(double newSpeedRatio) {
    return new KienzleCorrections(rakeRatio, newSpeedRatio, wearRatio, compressionRatio);
  }

  /** The same with the factor of an edge state. */
  public KienzleCorrections withWear(EdgeWear wear) {
    return new KienzleCorrections(rakeRatio, speedRatio, wear.ratio(), compressionRatio);
  }

  /** The same with the factor of a kind of cut. */
  public KienzleCorrections withCompression(ChipCompression compression) {
    return new KienzleCorrections(rakeRatio, speedRatio, wearRatio, compression.ratio());
  }
}
