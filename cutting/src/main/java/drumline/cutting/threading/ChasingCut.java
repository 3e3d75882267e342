package drumline.cutting.threading;

import drumline.cutting.drive.SpindleSpeed;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.CuttingPower;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.force.KienzleForce;
import drumline.cutting.validity.Require;

/**
 * Load of one pass of a threading point fed straight in.
 *
 * <p>A = tan(φ/2)·(a2² − a1²) + c·(a2 − a1); h = (a2 − a1)·sin(φ/2); Fc = kc(h)·K·A; radial force =
 * rp·Fc.
 *
 * <p>Source: geometry of the V section with {@link KienzleForce}; derived. Both flanks cut at once.
 *
 * @param includedAngleDeg angle φ of the thread, above 0 and below 120 (60 metric, 55 pipe)
 * @param tipFlatMm width c of the point's flat, 0 or more
 * @param diameterMm diameter of the thread, above 0
 * @param passiveForceRatio rp, 0 … 2
 */
public record ChasingCut(
    double includedAngleDeg, double tipFlatMm, double diameterMm, double passiveForceRatio) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public ChasingCut {
    Require.inside("includedAngleDeg", includedAngleDeg, 0, 120);
    Require.notNegative("tipFlatMm", tipFlatMm);
    Require.positive("diameterMm", diameterMm);
    Require.between("passiveForceRatio", passiveForceRatio, 0, 2);
  }

  /**
   * Area of the chip of one pass.
   *
   * @param fromMm depth a1 before the pass, 0 or more
   * @param toMm depth a2 after it, above a1
   * @throws IllegalArgumentException if a depth is outside its range
   */
  public double areaMm2(double fromMm, double toMm) {
    Require.notNegative("fromMm", fromMm);
    Require.positive("toMm - fromMm", toMm - fromMm);
    double slope = Math.tan(Math.toRadians(includedAngleDeg / 2));
    return slope * (toMm * toMm - fromMm * fromMm) + tipFlatMm * (toMm - fromMm);
  }

  /**
   * Forces, torque and power of one pass.
   *
   * @param constants kc1.1 and mc of the material
   * @param corrections factors, with {@code GROOVING} for the crowded chip
   * @param fromMm depth a1 before the pass, 0 or more
   * @param toMm depth a2 after it, above a1
   * @param speedRevPerMin spindle speed n, above 0
   * @throws IllegalArgumentException if a value is outside its range
   */
  public CuttingLoad load(
      KienzleConstants constants,
      KienzleCorrections corrections,
      double fromMm,
      double toMm,
      double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    double areaMm2 = areaMm2(fromMm, toMm);
    double thicknessMm = (toMm - fromMm) * Math.sin(Math.toRadians(includedAngleDeg / 2));
    double kcMpa = KienzleForce.specificForceMpa(constants, corrections, thicknessMm);
    double forceN = kcMpa * areaMm2;
    return new CuttingLoad(
        kcMpa,
        thicknessMm,
        forceN,
        0,
        passiveForceRatio * forceN,
        CuttingPower.torqueNm(forceN, diameterMm),
        CuttingPower.powerKw(forceN, SpindleSpeed.mPerMin(speedRevPerMin, diameterMm)),
        KienzleConstants.validity(thicknessMm));
  }
}
