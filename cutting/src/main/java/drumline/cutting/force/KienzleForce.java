package drumline.cutting.force;

import drumline.cutting.validity.Require;

/**
 * Main cutting force from the chip section.
 *
 * <p>Fc = kc1.1·h^−mc·K·b·h (N).
 *
 * <p>Source: [TSCH] Dietrich and Tschätsch, 11th edition, cutting force after Kienzle; checked on
 * [ESKC] and [RN1391].
 */
public final class KienzleForce {
  private KienzleForce() {}

  /**
   * Main cutting force Fc.
   *
   * @param constants kc1.1 and mc of the material
   * @param corrections factors for the cut at hand
   * @param chip chip section
   */
  public static double forceN(
      KienzleConstants constants, KienzleCorrections corrections, ChipSection chip) {
    return specificForceMpa(constants, corrections, chip.thicknessMm()) * chip.areaMm2();
  }

  /**
   * Specific cutting force kc with corrections.
   *
   * @param constants kc1.1 and mc of the material
   * @param corrections factors for the cut at hand
   * @param thicknessMm chip thickness h, above 0
   * @throws IllegalArgumentException if thicknessMm is not above 0
   */
  public static double specificForceMpa(
      KienzleConstants constants, KienzleCorrections corrections, double thicknessMm) {
    return constants.specificForceMpa(thicknessMm) * corrections.productRatio();
  }

  /**
   * Feed at which the force reaches an allowed value: f = (F/(kc1.1·K·ap·sin^−mc κ))^(1/(1−mc)).
   *
   * @param constants kc1.1 and mc of the material
   * @param corrections factors for the cut at hand
   * @param depthMm depth of cut, above 0
   * @param edgeAngleDeg edge angle κ, above 0 and below 180
   * @param allowedForceN allowed main force, above 0
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double feedMmPerRev(
      KienzleConstants constants,
      KienzleCorrections corrections,
      double depthMm,
      double edgeAngleDeg,
      double allowedForceN) {
    Require.positive("depthMm", depthMm);
    Require.inside("edgeAngleDeg", edgeAngleDeg, 0, 180);
    Require.positive("allowedForceN", allowedForceN);
    double sine = Math.sin(Math.toRadians(edgeAngleDeg));
    double unit =
        constants.kc11Mpa()
            * corrections.productRatio()
            * depthMm
            * Math.pow(sine, -constants.mcRatio());
    return Math.pow(allowedForceN / unit, 1 / (1 - constants.mcRatio()));
  }
}
