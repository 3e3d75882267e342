package drumline.cutting.turning;

import drumline.cutting.drive.SpindleSpeed;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.CuttingPower;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.force.KienzleForce;
import drumline.cutting.validity.Require;
import drumline.cutting.validity.Validity;

/**
 * Load of a form tool plunged in from the cross slide.
 *
 * <p>h = f, b = developed length of the edge in cut; Fc = kc·K·b·f; radial force = rp·Fc.
 *
 * <p>Source: [TSCH] Dietrich and Tschätsch, 11th edition, cutting force; rp 0.5–0.8 and the width
 * limit of 2.5 times the smallest diameter from memory, common practice. Its time is that of {@code
 * GroovePlunge}.
 *
 * @param edgeLengthMm developed length b of the edge in cut, at least the width
 * @param widthMm width along the axis, above 0
 * @param diameterMm largest diameter in cut, above 0
 * @param smallestDiameterMm smallest diameter that is left, above 0 to the largest
 * @param feedMmPerRev feed f, above 0
 * @param passiveForceRatio rp, 0 … 2
 */
public record FormToolCut(
    double edgeLengthMm,
    double widthMm,
    double diameterMm,
    double smallestDiameterMm,
    double feedMmPerRev,
    double passiveForceRatio) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public FormToolCut {
    Require.positive("widthMm", widthMm);
    Require.positive("edgeLengthMm", edgeLengthMm);
    Require.between("widthMm", widthMm, 0, edgeLengthMm);
    Require.positive("diameterMm", diameterMm);
    Require.positive("smallestDiameterMm", smallestDiameterMm);
    Require.between("smallestDiameterMm", smallestDiameterMm, 0, diameterMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
    Require.between("passiveForceRatio", passiveForceRatio, 0, 2);
  }

  /**
   * Forces, torque and power with the whole edge in cut.
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
    double forceN = kcMpa * edgeLengthMm * feedMmPerRev;
    return new CuttingLoad(
        kcMpa,
        feedMmPerRev,
        forceN,
        0,
        passiveForceRatio * forceN,
        CuttingPower.torqueNm(forceN, diameterMm),
        CuttingPower.powerKw(forceN, SpindleSpeed.mPerMin(speedRevPerMin, diameterMm)),
        KienzleConstants.validity(feedMmPerRev)
            .and(
                Validity.of(
                    "form width to smallest diameter",
                    widthMm / smallestDiameterMm,
                    0,
                    2.5,
                    "",
                    "the work is likely to bend or chatter under the form tool")));
  }
}
