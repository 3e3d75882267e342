package drumline.cutting.parting;

import drumline.cutting.drive.SpindleSpeed;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.CuttingPower;
import drumline.cutting.force.ForceSplit;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.force.KienzleForce;
import drumline.cutting.validity.Require;
import drumline.cutting.validity.Validity;

/**
 * Groove plunged into the face along the axis.
 *
 * <p>t = 60·[(la + a)/(f·n) + u/n]; Fc = kc·K·w·f; axial force = rf·Fc; M = Fc·D/2000. The blade is
 * curved: the first plunge must lie between the tool's two diameters.
 *
 * <p>Source: [BASIS] 2.9 and [TSCH] Dietrich and Tschätsch, 11th edition, cutting force; feeds
 * 0.03–0.08 mm/rev from memory; the diameters are the tool maker's.
 *
 * @param outerDiameterMm outer diameter D of the groove, above twice the blade's width
 * @param widthMm width w of the blade, above 0
 * @param depthMm depth a, above 0
 * @param approachMm approach la at feed, 0 or more
 * @param feedMmPerRev feed f, above 0
 * @param dwellCount revolutions u at the bottom, 0 or more
 */
public record FaceGroove(
    double outerDiameterMm,
    double widthMm,
    double depthMm,
    double approachMm,
    double feedMmPerRev,
    double dwellCount) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public FaceGroove {
    Require.positive("widthMm", widthMm);
    Require.positive("outerDiameterMm - 2 widthMm", outerDiameterMm - 2 * widthMm);
    Require.positive("depthMm", depthMm);
    Require.notNegative("approachMm", approachMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
    Require.notNegative("dwellCount", dwellCount);
  }

  /**
   * Time of the plunge.
   *
   * @param speedRevPerMin spindle speed n, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double timeS(double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    return 60 * ((approachMm + depthMm) / feedMmPerRev + dwellCount) / speedRevPerMin;
  }

  /**
   * Forces, torque and power, on the outer diameter.
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
        ForceSplit.STRAIGHT_IN.feedForceRatio() * forceN,
        0,
        CuttingPower.torqueNm(forceN, outerDiameterMm),
        CuttingPower.powerKw(forceN, SpindleSpeed.mPerMin(speedRevPerMin, outerDiameterMm)),
        KienzleConstants.validity(feedMmPerRev));
  }

  /**
   * Whether the curved blade clears the wall of the first plunge.
   *
   * @param smallestDiameterMm smallest outer diameter the tool allows, above 0
   * @param largestDiameterMm largest outer diameter the tool allows, at least the smallest
   * @throws IllegalArgumentException if the two are outside their ranges
   */
  public Validity firstPlunge(double smallestDiameterMm, double largestDiameterMm) {
    Require.positive("smallestDiameterMm", smallestDiameterMm);
    Require.positive("largestDiameterMm", largestDiameterMm);
    Require.between("smallestDiameterMm", smallestDiameterMm, 0, largestDiameterMm);
    return Validity.of(
        "outer diameter of the first plunge",
        outerDiameterMm,
        smallestDiameterMm,
        largestDiameterMm,
        "mm",
        "the blade rubs on a wall of the groove");
  }
}
