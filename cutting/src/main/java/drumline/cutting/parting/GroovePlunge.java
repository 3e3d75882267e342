package drumline.cutting.parting;

import drumline.cutting.turning.SurfaceSpeed;
import drumline.cutting.turning.SurfaceSpeedFacing;
import drumline.cutting.validity.Require;

/**
 * One plunge of a grooving or form tool on the outside, along the radius, with a dwell at the
 * bottom.
 *
 * <p>t = 60·[(la + a)/(f·n) + u/n] (s), or over the diameter at constant surface speed.
 *
 * <p>Source: [BASIS] 2.9, derived; a dwell of 1–2 revolutions is common practice.
 *
 * @param outerDiameterMm diameter D at which the cut begins, above 0
 * @param depthMm depth a of the groove, above 0 to D/2
 * @param approachMm approach la at feed, 0 or more
 * @param feedMmPerRev feed f, above 0
 * @param dwellCount revolutions u at the bottom, 0 or more
 */
public record GroovePlunge(
    double outerDiameterMm,
    double depthMm,
    double approachMm,
    double feedMmPerRev,
    double dwellCount) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public GroovePlunge {
    Require.positive("outerDiameterMm", outerDiameterMm);
    Require.positive("depthMm", depthMm);
    Require.between("depthMm", depthMm, 0, outerDiameterMm / 2);
    Require.notNegative("approachMm", approachMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
    Require.notNegative("dwellCount", dwellCount);
  }

  /** Revolutions that the plunge takes, whatever the speed. */
  public double revolutionsCount() {
    return (approachMm + depthMm) / feedMmPerRev + dwellCount;
  }

  /**
   * Time at constant spindle speed.
   *
   * @param speedRevPerMin spindle speed n, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double timeS(double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    return 60 * revolutionsCount() / speedRevPerMin;
  }

  /**
   * Time at constant surface speed; the approach is counted at the speed of the outer diameter.
   *
   * @param speed surface speed with clamps
   */
  public double timeS(SurfaceSpeed speed) {
    double outer = outerDiameterMm / 2;
    double inner = outer - depthMm;
    double approachS = 60 * approachMm / (feedMmPerRev * speed.revPerMin(outer));
    double dwellS = 60 * dwellCount / speed.revPerMin(inner);
    return approachS + new SurfaceSpeedFacing(outer, inner, feedMmPerRev).timeS(speed) + dwellS;
  }
}
