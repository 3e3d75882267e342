package drumline.cutting.milling;

import drumline.cutting.drive.SpindleSpeed;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.CuttingPower;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.force.KienzleForce;
import drumline.cutting.validity.Require;

/**
 * Load of a milling cutter.
 *
 * <p>b = ap/(sin κ·cos λ); zE = z·φs/360; Fcm = kc(hm)·b·hm on one tooth; mean torque M =
 * Fcm·zE·D/2000, power P = Fcm·zE·vc/60000; force on the work Fcm·max(1, zE).
 *
 * <p>Source: [TSCH] Dietrich and Tschätsch, 11th edition, milling force and power. The force turns
 * with the tooth, so axial and radial force are bounds: each is the whole force. Torque and power
 * are means; with less than one tooth in contact the peak torque is higher by 1/zE.
 *
 * @param chip cutter, engagement and feed
 * @param teethCount teeth z, at least 1
 * @param depthMm depth ap along the cutter's axis, above 0
 * @param helixDeg helix angle λ, 0 to below 90
 */
public record MillingCut(MillingChip chip, int teethCount, double depthMm, double helixDeg) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public MillingCut {
    Require.atLeast("teethCount", teethCount, 1);
    Require.positive("depthMm", depthMm);
    Require.between("helixDeg", helixDeg, 0, 89);
  }

  /** Teeth zE in contact on the average. */
  public double teethInContactCount() {
    return teethCount * chip.contactAngleDeg() / 360;
  }

  /**
   * Forces on the work, torque and power at the tool's spindle.
   *
   * @param constants kc1.1 and mc of the material
   * @param corrections factors, with {@code MILLING} for the crowded chip
   * @param toolRevPerMin speed of the cutter, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public CuttingLoad load(
      KienzleConstants constants, KienzleCorrections corrections, double toolRevPerMin) {
    Require.positive("toolRevPerMin", toolRevPerMin);
    double thicknessMm = chip.meanThicknessMm();
    double kcMpa = KienzleForce.specificForceMpa(constants, corrections, thicknessMm);
    double sine = Math.sin(Math.toRadians(chip.edgeAngleDeg()));
    double widthMm = depthMm / (sine * Math.cos(Math.toRadians(helixDeg)));
    double toothN = kcMpa * widthMm * thicknessMm;
    double meanN = toothN * teethInContactCount();
    double peakN = toothN * Math.max(1, teethInContactCount());
    double speedMPerMin = SpindleSpeed.mPerMin(toolRevPerMin, chip.cutterDiameterMm());
    return new CuttingLoad(
        kcMpa,
        thicknessMm,
        peakN,
        peakN,
        peakN,
        CuttingPower.torqueNm(meanN, chip.cutterDiameterMm()),
        CuttingPower.powerKw(meanN, speedMPerMin),
        KienzleConstants.validity(thicknessMm));
  }
}
