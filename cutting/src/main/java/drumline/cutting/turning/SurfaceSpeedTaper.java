package drumline.cutting.turning;

import drumline.cutting.validity.Require;

/**
 * Turning a taper at constant surface speed with speed clamps, feed counted along the slant.
 *
 * <p>t = 60·(s/|R1 − R2|)·∫ dr/(f·n(r)); without clamps t = 60·π·(R1 + R2)·s/(1000·f·vc) (s), s the
 * slant length.
 *
 * <p>Source: [BASIS] section 3, F4, derived; inputs of one example [STUDYZIN].
 *
 * @param startDiameterMm diameter at one end, 0 or more
 * @param endDiameterMm diameter at the other end, 0 or more; the two not both 0
 * @param lengthMm length along the axis, 0 or more (0 is facing)
 * @param feedMmPerRev feed f along the slant, above 0
 */
public record SurfaceSpeedTaper(
    double startDiameterMm, double endDiameterMm, double lengthMm, double feedMmPerRev) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public SurfaceSpeedTaper {
    Require.notNegative("startDiameterMm", startDiameterMm);
    Require.notNegative("endDiameterMm", endDiameterMm);
    Require.positive("larger diameter", Math.max(startDiameterMm, endDiameterMm));
    Require.notNegative("lengthMm", lengthMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
  }

  /** Length s of the slant. */
  public double slantMm() {
    return Math.hypot(lengthMm, (startDiameterMm - endDiameterMm) / 2);
  }

  /**
   * Time, if the drive follows at once.
   *
   * @param speed surface speed with clamps
   */
  public double timeS(SurfaceSpeed speed) {
    double small = Math.min(startDiameterMm, endDiameterMm) / 2;
    double large = Math.max(startDiameterMm, endDiameterMm) / 2;
    if (large - small < 1e-9 * large) {
      return 60 * slantMm() / (feedMmPerRev * speed.revPerMin(large));
    }
    double radialMmMin = speed.radiusIntegralMmMin(large) - speed.radiusIntegralMmMin(small);
    return 60 * radialMmMin * slantMm() / ((large - small) * feedMmPerRev);
  }
}
