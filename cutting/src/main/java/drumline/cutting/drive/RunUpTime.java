package drumline.cutting.drive;

import drumline.cutting.validity.Require;

/**
 * Time to change a spindle's speed.
 *
 * <p>Constant acceleration: t = |n2 − n1|/α. From the curve: t = ∫ J·dω/(M(ω) − Ml), which with no
 * load is J·(ω2 − ω1)/Mr below base speed and J·(ω2² − ω1²)/(2·Pr) at constant power and J·(ω2³ −
 * ω1³)/(3·Pr·ωd) beyond the drop speed.
 *
 * <p>Source: Newton's law for rotation; derived. Braking is taken as strong as driving.
 */
public final class RunUpTime {
  private RunUpTime() {}

  /**
   * Time at constant acceleration.
   *
   * @param fromRevPerMin speed before, 0 or more
   * @param toRevPerMin speed after, 0 or more
   * @param accelerationRevPerMinPerS acceleration α, above 0
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double constantS(
      double fromRevPerMin, double toRevPerMin, double accelerationRevPerMinPerS) {
    Require.notNegative("fromRevPerMin", fromRevPerMin);
    Require.notNegative("toRevPerMin", toRevPerMin);
    Require.positive("accelerationRevPerMinPerS", accelerationRevPerMinPerS);
    return Math.abs(toRevPerMin - fromRevPerMin) / accelerationRevPerMinPerS;
  }

  /**
   * Time with the whole torque of the curve, without load.
   *
   * @param curve torque over speed
   * @param inertiaKgM2 inertia J of spindle, chuck and bar, above 0
   * @param fromRevPerMin speed before, 0 … highest speed
   * @param toRevPerMin speed after, 0 … highest speed
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double ofCurveS(
      SpindleCurve curve, double inertiaKgM2, double fromRevPerMin, double toRevPerMin) {
    Require.positive("inertiaKgM2", inertiaKgM2);
    Require.between("fromRevPerMin", fromRevPerMin, 0, curve.maxSpeedRevPerMin());
    Require.between("toRevPerMin", toRevPerMin, 0, curve.maxSpeedRevPerMin());
    return inertiaKgM2 * Math.abs(impulse(curve, toRevPerMin) - impulse(curve, fromRevPerMin));
  }

  /** Integral of dω/M from standstill to a speed. */
  private static double impulse(SpindleCurve curve, double speedRevPerMin) {
    double radians = Math.PI / 30;
    double watts = 1000 * curve.ratedPowerKw();
    double base = curve.baseSpeedRevPerMin() * radians;
    double drop = curve.dropSpeedRevPerMin() * radians;
    double speed = speedRevPerMin * radians;
    double low = Math.min(speed, base) * base / watts;
    double middle = Math.min(Math.max(speed, base), drop);
    double high = Math.max(speed, drop);
    return low
        + (middle * middle - base * base) / (2 * watts)
        + (high * high * high - drop * drop * drop) / (3 * watts * drop);
  }
}
