package drumline.cutting.clamping;

import drumline.cutting.validity.Require;

/**
 * Grip that must be set at standstill.
 *
 * <p>F_sp = S_z·F_spz; F_sp0 = S_sp·(F_sp + Fc) gripped from outside, S_sp·(F_sp − Fc) from inside.
 *
 * <p>Source: [VDI-3106] as quoted by [SCHUNK] and [OPTIMUM]: S_z and S_sp at least 1.5; S_z by
 * [RN1391] p. 46: 2.0 new, 2.4 old chuck; 4.0 and 4.8 when overhung, unsupported and without axial
 * seat.
 *
 * @param cuttingGripN grip F_spz that just holds the cutting forces, 0 or more
 * @param cuttingSafetyRatio safety S_z of the cutting forces, at least 1
 * @param gripSafetyRatio safety S_sp of the grip, at least 1
 */
public record RequiredGrip(double cuttingGripN, double cuttingSafetyRatio, double gripSafetyRatio) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public RequiredGrip {
    Require.notNegative("cuttingGripN", cuttingGripN);
    Require.between("cuttingSafetyRatio", cuttingSafetyRatio, 1, 10);
    Require.between("gripSafetyRatio", gripSafetyRatio, 1, 10);
  }

  /** Grip F_sp that must be left at speed. */
  public double turningN() {
    return cuttingSafetyRatio * cuttingGripN;
  }

  /**
   * Grip F_sp0 at standstill; 0 when speed alone holds work gripped from inside.
   *
   * @param centrifugalN centrifugal force Fc at speed, 0 or more
   * @param side side on which the work is gripped
   * @throws IllegalArgumentException if the force is negative
   */
  public double standingN(double centrifugalN, TurningGrip.Side side) {
    Require.notNegative("centrifugalN", centrifugalN);
    return side == TurningGrip.Side.OUTSIDE
        ? gripSafetyRatio * (turningN() + centrifugalN)
        : gripSafetyRatio * Math.max(0, turningN() - centrifugalN);
  }
}
