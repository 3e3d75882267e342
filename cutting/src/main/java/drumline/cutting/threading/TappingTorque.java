package drumline.cutting.threading;

import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.CuttingPower;
import drumline.cutting.validity.Require;
import drumline.cutting.validity.Validity;

/**
 * Torque of tapping.
 *
 * <p>M = kc·P²·D/8000 (N·m); by thread depth: M = tan θ·kc·K·(D − D0)²·(D + 2·D0)/24000, θ the half
 * angle of the thread and K 0.75–1.5 by kind of tap; forming takes 2–3 times the cut torque.
 *
 * <p>Source: [LUBERO] for the first, [YAM] p. 639 for the second, [YAM2] p. 1158 for forming. The
 * kc of each belongs to it and is not the kc1.1 of turning.
 */
public final class TappingTorque {
  private TappingTorque() {}

  /**
   * Torque of a cutting tap by pitch.
   *
   * @param specificForceMpa specific force kc for tapping, above 0
   * @param pitchMm pitch P, above 0
   * @param diameterMm nominal diameter D, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static double cutNm(double specificForceMpa, double pitchMm, double diameterMm) {
    Require.positive("specificForceMpa", specificForceMpa);
    Require.positive("pitchMm", pitchMm);
    Require.positive("diameterMm", diameterMm);
    return specificForceMpa * pitchMm * pitchMm * diameterMm / 8000;
  }

  /**
   * Torque of a cutting tap by the depth of thread left in the hole.
   *
   * @param specificForceMpa specific force kc of this formula, above 0
   * @param tapFactorRatio factor K by kind of tap, 0.75 … 1.5
   * @param diameterMm nominal diameter D, above D0
   * @param holeDiameterMm diameter D0 of the hole, above 0
   * @param halfAngleDeg half angle θ of the thread, 30 for metric and unified
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double byDepthNm(
      double specificForceMpa,
      double tapFactorRatio,
      double diameterMm,
      double holeDiameterMm,
      double halfAngleDeg) {
    Require.positive("specificForceMpa", specificForceMpa);
    Require.between("tapFactorRatio", tapFactorRatio, 0.75, 1.5);
    Require.positive("diameterMm", diameterMm);
    Require.positive("holeDiameterMm", holeDiameterMm);
    Require.between("holeDiameterMm", holeDiameterMm, 0, diameterMm);
    Require.inside("halfAngleDeg", halfAngleDeg, 0, 90);
    double depth = diameterMm - holeDiameterMm;
    return Math.tan(Math.toRadians(halfAngleDeg))
        * specificForceMpa
        * tapFactorRatio
        * depth
        * depth
        * (diameterMm + 2 * holeDiameterMm)
        / 24000;
  }

  /**
   * Torque of a forming tap.
   *
   * @param cutNm torque of a cutting tap for the same thread, 0 or more
   * @param formingRatio factor, 2 … 3
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double formedNm(double cutNm, double formingRatio) {
    Require.notNegative("cutNm", cutNm);
    Require.between("formingRatio", formingRatio, 2, 3);
    return cutNm * formingRatio;
  }

  /**
   * The torque as a load; the tap pulls itself in, so no axial force is counted.
   *
   * @param torqueNm torque M, 0 or more
   * @param specificForceMpa specific force kc it came from, above 0
   * @param diameterMm nominal diameter D, above 0
   * @param speedRevPerMin speed between work and tap, above 0
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static CuttingLoad load(
      double torqueNm, double specificForceMpa, double diameterMm, double speedRevPerMin) {
    Require.notNegative("torqueNm", torqueNm);
    Require.positive("specificForceMpa", specificForceMpa);
    Require.positive("diameterMm", diameterMm);
    return new CuttingLoad(
        specificForceMpa,
        0,
        2000 * torqueNm / diameterMm,
        0,
        0,
        torqueNm,
        CuttingPower.ofTorqueKw(torqueNm, speedRevPerMin),
        Validity.inside());
  }
}
