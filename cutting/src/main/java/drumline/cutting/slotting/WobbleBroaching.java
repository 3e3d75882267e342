package drumline.cutting.slotting;

import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.force.KienzleForce;
import drumline.cutting.validity.Require;

/**
 * Inside hexagon or square pressed in by a broach whose axis wobbles about the spindle's.
 *
 * <p>t = 60·(la + l)/(f·n) (s); thrust ≈ kc(h = f)·K·U·f, U the developed length of edge that cuts.
 *
 * <p>Source: [BASIS] 2.8; tilt of 1–1.5° and feed 0.03–0.1 mm/rev from memory. The thrust is an
 * estimate on the safe side: the tilt lets only part of the edge cut at a time.
 *
 * @param depthMm depth l, above 0
 * @param approachMm approach la at feed, 0 or more
 * @param edgeLengthMm developed length U of edge outside the pilot hole, above 0
 * @param feedMmPerRev feed f, above 0
 */
public record WobbleBroaching(
    double depthMm, double approachMm, double edgeLengthMm, double feedMmPerRev) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public WobbleBroaching {
    Require.positive("depthMm", depthMm);
    Require.notNegative("approachMm", approachMm);
    Require.positive("edgeLengthMm", edgeLengthMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
  }

  /**
   * Time in.
   *
   * @param speedRevPerMin spindle speed n, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double timeS(double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    return 60 * (approachMm + depthMm) / (feedMmPerRev * speedRevPerMin);
  }

  /**
   * Thrust; torque and power are small and not counted.
   *
   * @param constants kc1.1 and mc of the material
   * @param corrections factors, with {@code SLOTTING} for the crowded chip
   */
  public CuttingLoad load(KienzleConstants constants, KienzleCorrections corrections) {
    double kcMpa = KienzleForce.specificForceMpa(constants, corrections, feedMmPerRev);
    double forceN = kcMpa * edgeLengthMm * feedMmPerRev;
    return new CuttingLoad(
        kcMpa, feedMmPerRev, forceN, forceN, 0, 0, 0, KienzleConstants.validity(feedMmPerRev));
  }
}
