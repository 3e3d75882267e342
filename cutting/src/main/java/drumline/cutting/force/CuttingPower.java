package drumline.cutting.force;

import drumline.cutting.validity.Require;

/**
 * Power and torque of a cutting force.
 *
 * <p>Pc = Fc·vc/60000 (kW); M = Fc·d/2000 (N·m); Pc = π·M·n/30000 (kW); Pmot = Pc/η.
 *
 * <p>Source: [TSCH] Dietrich and Tschätsch, 11th edition, power; the constant 9549 of handbooks is
 * 30000/π.
 */
public final class CuttingPower {
  private CuttingPower() {}

  /**
   * Power of a force at a cutting speed.
   *
   * @param forceN main force Fc, 0 or more
   * @param speedMPerMin cutting speed vc, 0 or more
   * @throws IllegalArgumentException if a value is negative
   */
  public static double powerKw(double forceN, double speedMPerMin) {
    Require.notNegative("forceN", forceN);
    Require.notNegative("speedMPerMin", speedMPerMin);
    return forceN * speedMPerMin / 60000;
  }

  /**
   * Torque of a force on a diameter.
   *
   * @param forceN main force Fc, 0 or more
   * @param diameterMm diameter d at the cut, 0 or more
   * @throws IllegalArgumentException if a value is negative
   */
  public static double torqueNm(double forceN, double diameterMm) {
    Require.notNegative("forceN", forceN);
    Require.notNegative("diameterMm", diameterMm);
    return forceN * diameterMm / 2000;
  }

  /**
   * Power of a torque at a spindle speed.
   *
   * @param torqueNm torque M, 0 or more
   * @param speedRevPerMin spindle speed n, 0 or more
   * @throws IllegalArgumentException if a value is negative
   */
  public static double ofTorqueKw(double torqueNm, double speedRevPerMin) {
    Require.notNegative("torqueNm", torqueNm);
    Require.notNegative("speedRevPerMin", speedRevPerMin);
    return Math.PI * torqueNm * speedRevPerMin / 30000;
  }

  /**
   * Power that the motor must give.
   *
   * @param powerKw cutting power Pc, 0 or more
   * @param efficiencyRatio efficiency η of the drive, above 0 to 1 (0.75–0.85 belt, 0.85–0.95
   *     direct, from memory; 0.8 in [TSCH])
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double motorKw(double powerKw, double efficiencyRatio) {
    Require.notNegative("powerKw", powerKw);
    Require.positive("efficiencyRatio", efficiencyRatio);
    Require.between("efficiencyRatio", efficiencyRatio, 0, 1);
    return powerKw / efficiencyRatio;
  }
}
