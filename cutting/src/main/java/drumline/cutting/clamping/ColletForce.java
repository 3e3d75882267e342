package drumline.cutting.clamping;

import drumline.cutting.validity.Require;

/**
 * Radial grip from the force that closes a taper collet.
 *
 * <p>F_rad = F_draw/tan(α + ρ), ρ = atan μ.
 *
 * <p>Source: [BASIS] section 6, wedge with friction; α about 15° and μ 0.1–0.15 from memory. The
 * maker's measured grip goes before this.
 */
public final class ColletForce {
  private ColletForce() {}

  /**
   * Total radial grip.
   *
   * @param drawForceN closing force, 0 or more
   * @param taperAngleDeg angle α between taper and axis, above 0 and below 60
   * @param taperFrictionRatio friction μ in the taper, 0 … 0.5
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double radialN(double drawForceN, double taperAngleDeg, double taperFrictionRatio) {
    Require.notNegative("drawForceN", drawForceN);
    Require.inside("taperAngleDeg", taperAngleDeg, 0, 60);
    Require.between("taperFrictionRatio", taperFrictionRatio, 0, 0.5);
    return drawForceN / Math.tan(Math.toRadians(taperAngleDeg) + Math.atan(taperFrictionRatio));
  }
}
