package drumline.cutting.drive;

import drumline.cutting.validity.Require;

/**
 * Spindle speed and cutting speed on a diameter.
 *
 * <p>n = 1000·vc/(π·d) (rev/min), vc = π·d·n/1000 (m/min), vf = f·n (mm/min).
 *
 * <p>Source: [TSCH] Dietrich and Tschätsch, 11th edition, cutting speed.
 */
public final class SpindleSpeed {
  private SpindleSpeed() {}

  /**
   * Spindle speed for a cutting speed.
   *
   * @param speedMPerMin cutting speed vc, above 0
   * @param diameterMm diameter d, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static double revPerMin(double speedMPerMin, double diameterMm) {
    Require.positive("speedMPerMin", speedMPerMin);
    Require.positive("diameterMm", diameterMm);
    return 1000 * speedMPerMin / (Math.PI * diameterMm);
  }

  /**
   * Cutting speed of a spindle speed.
   *
   * @param speedRevPerMin spindle speed n, 0 or more
   * @param diameterMm diameter d, 0 or more
   * @throws IllegalArgumentException if a value is negative
   */
  public static double mPerMin(double speedRevPerMin, double diameterMm) {
    Require.notNegative("speedRevPerMin", speedRevPerMin);
    Require.notNegative("diameterMm", diameterMm);
    return Math.PI * diameterMm * speedRevPerMin / 1000;
  }
}
