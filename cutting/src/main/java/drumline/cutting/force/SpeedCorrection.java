package drumline.cutting.force;

import drumline.cutting.validity.Require;

/**
 * A little more force at low cutting speed.
 *
 * <p>Kv = 2.023·vc^−0.153 below 100 m/min, 1.380·vc^−0.07 above; both are 1.000 at 100 m/min.
 *
 * <p>Source: curve from memory (handbooks in German); the flat values 1.0 for carbide near and
 * above 100 m/min and 1.2 for high-speed steel are [TSCH] Dietrich and Tschätsch, 11th edition.
 */
public final class SpeedCorrection {
  /** Flat factor for tools of high-speed steel. */
  public static final double HIGH_SPEED_STEEL_RATIO = 1.2;

  private SpeedCorrection() {}

  /**
   * Factor Kv by the curve.
   *
   * @param speedMPerMin cutting speed vc, above 0 (measured about 20 … 600)
   * @throws IllegalArgumentException if speedMPerMin is not above 0
   */
  public static double ratio(double speedMPerMin) {
    Require.positive("speedMPerMin", speedMPerMin);
    return speedMPerMin < 100
        ? 2.023 / Math.pow(speedMPerMin, 0.153)
        : 1.380 / Math.pow(speedMPerMin, 0.07);
  }
}
