package drumline.cutting.parting;

import drumline.cutting.drive.SpindleSpeed;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.CuttingPower;
import drumline.cutting.force.ForceSplit;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.force.KienzleForce;
import drumline.cutting.validity.Require;

/**
 * Load of a blade fed straight into the outside: groove, recess, cut-off.
 *
 * <p>b = blade width, h = f; Fc = kc·K·b·f; radial force = rf·Fc; M = Fc·d/2000.
 *
 * <p>Source: [TSCH] Dietrich and Tschätsch, 11th edition, cutting force; split from memory.
 *
 * @param widthMm width b of the blade, above 0
 * @param diameterMm diameter d at the cut (the largest for the largest torque), above 0
 * @param feedMmPerRev feed f, above 0
 * @param split shares of feed and passive force, usually {@link ForceSplit#STRAIGHT_IN}
 */
public record PlungeCut(double widthMm, double diameterMm, double feedMmPerRev, ForceSplit split) {
  /**
   * @throws IllegalArgumentException if a value is not above 0
   */
  public PlungeCut {
    Require.positive("widthMm", widthMm);
    Require.positive("diameterMm", diameterMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
  }

  /**
   * Forces, torque and power.
   *
   * @param constants kc1.1 and mc of the material
   * @param corrections factors, with {@code GROOVING} for the crowded chip
   * @param speedRevPerMin spindle speed n, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public CuttingLoad load(
      KienzleConstants constants, KienzleCorrections corrections, double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    double kcMpa = KienzleForce.specificForceMpa(constants, corrections, feedMmPerRev);
    double forceN = kcMpa * widthMm * feedMmPerRev;
    return new CuttingLoad(
        kcMpa,
        feedMmPerRev,
        forceN,
        split.passiveForceRatio() * forceN,
        split.feedForceRatio() * forceN,
        CuttingPower.torqueNm(forceN, diameterMm),
        CuttingPower.powerKw(forceN, SpindleSpeed.mPerMin(speedRevPerMin, diameterMm)),
        KienzleConstants.validity(feedMmPerRev));
  }
}
