package drumline.cutting.turning;

import drumline.cutting.validity.Require;

/**
 * Facing, grooving or cut-off along the radius at constant surface speed with speed clamps.
 *
 * <p>rc = 1000·vc/(2π·nmax); ra = min(R0, max(R1, rc)); t = 60·[π·(R0² − ra²)/(1000·vc·f) + (ra −
 * R1)/(nmax·f)] (s); the lowest-speed clamp likewise.
 *
 * <p>Source: [BASIS] section 3, derived; equals the constant speed taken at the mean diameter when
 * no clamp acts ([SHARMA] problem 4.13).
 *
 * @param outerRadiusMm larger radius R0, above 0
 * @param innerRadiusMm smaller radius R1, 0 (solid bar) … R0; the direction does not matter
 * @param feedMmPerRev feed f, above 0
 */
public record SurfaceSpeedFacing(double outerRadiusMm, double innerRadiusMm, double feedMmPerRev) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public SurfaceSpeedFacing {
    Require.positive("outerRadiusMm", outerRadiusMm);
    Require.between("innerRadiusMm", innerRadiusMm, 0, outerRadiusMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
  }

  /**
   * Time, if the drive follows at once.
   *
   * @param speed surface speed with clamps
   */
  public double timeS(SurfaceSpeed speed) {
    double mmMin =
        speed.radiusIntegralMmMin(outerRadiusMm) - speed.radiusIntegralMmMin(innerRadiusMm);
    return 60 * mmMin / feedMmPerRev;
  }

  /**
   * Constant spindle speed that takes just as long.
   *
   * @param speed surface speed with clamps
   * @throws IllegalArgumentException if both radii are the same
   */
  public double equalTimeRevPerMin(SurfaceSpeed speed) {
    double travel = outerRadiusMm - innerRadiusMm;
    Require.positive("radial travel", travel);
    return 60 * travel / (feedMmPerRev * timeS(speed));
  }
}
