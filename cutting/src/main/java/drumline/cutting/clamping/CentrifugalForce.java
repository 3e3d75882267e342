package drumline.cutting.clamping;

import drumline.cutting.validity.Require;

/**
 * Pull of turning mass: of jaws or collet segments on their grip, of an eccentric bar on its
 * bearings.
 *
 * <p>F = m·r·(π·n/30)², m in kg, r in mm/1000. For jaws, m·r is the sum over all jaws.
 *
 * <p>Source: [VDI-3106] as quoted by [SCHUNK]; mechanics.
 */
public final class CentrifugalForce {
  private CentrifugalForce() {}

  /**
   * Force at a speed.
   *
   * @param massKg mass m, of all jaws together, 0 or more
   * @param radiusMm distance r of its centre of gravity from the axis, 0 or more
   * @param speedRevPerMin speed n, 0 or more
   * @throws IllegalArgumentException if a value is negative
   */
  public static double forceN(double massKg, double radiusMm, double speedRevPerMin) {
    Require.notNegative("massKg", massKg);
    Require.notNegative("radiusMm", radiusMm);
    Require.notNegative("speedRevPerMin", speedRevPerMin);
    double omega = Math.PI * speedRevPerMin / 30;
    return massKg * radiusMm / 1000 * omega * omega;
  }

  /**
   * Speed at which the force reaches a value.
   *
   * @param massKg mass m, of all jaws together, above 0
   * @param radiusMm distance r of its centre of gravity from the axis, above 0
   * @param forceN force F, 0 or more
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double speedRevPerMin(double massKg, double radiusMm, double forceN) {
    Require.positive("massKg", massKg);
    Require.positive("radiusMm", radiusMm);
    Require.notNegative("forceN", forceN);
    return 30 / Math.PI * Math.sqrt(forceN / (massKg * radiusMm / 1000));
  }
}
