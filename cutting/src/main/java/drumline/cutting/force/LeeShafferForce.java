package drumline.cutting.force;

import drumline.cutting.validity.Require;

/**
 * Cutting force from shear strength and friction, for a broach or slotting edge in a ductile metal.
 *
 * <p>λ = atan μ; φ = 45° + γ − λ; Fc = w·c·τ·cos(λ − γ)/(sin φ·cos(φ + λ − γ)), where φ + λ − γ =
 * 45°.
 *
 * <p>Source: [GM] Ghosh and Mallik, Manufacturing Science, problem 4.19 (broaching), shear angle
 * after Lee and Shaffer.
 *
 * @param shearStrengthMpa shear strength τ, above 0
 * @param frictionRatio friction μ between chip and tool, 0 … 2
 * @param rakeDeg rake γ, −30 … +40
 */
public record LeeShafferForce(double shearStrengthMpa, double frictionRatio, double rakeDeg) {
  /**
   * @throws IllegalArgumentException if a value is outside its range, or the shear angle is not
   *     between 0° and 90°
   */
  public LeeShafferForce {
    Require.positive("shearStrengthMpa", shearStrengthMpa);
    Require.between("frictionRatio", frictionRatio, 0, 2);
    Require.between("rakeDeg", rakeDeg, -30, 40);
    Require.inside("shear angle", shearAngle(frictionRatio, rakeDeg), 0, 90);
  }

  /** Shear angle φ. */
  public double shearAngleDeg() {
    return shearAngle(frictionRatio, rakeDeg);
  }

  /**
   * Force on one edge.
   *
   * @param widthMm width w of cut, above 0
   * @param depthMm depth c of cut of one edge, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public double forceN(double widthMm, double depthMm) {
    Require.positive("widthMm", widthMm);
    Require.positive("depthMm", depthMm);
    double lean = Math.atan(frictionRatio) - Math.toRadians(rakeDeg);
    double shear = Math.toRadians(shearAngleDeg());
    return widthMm
        * depthMm
        * shearStrengthMpa
        * Math.cos(lean)
        / (Math.sin(shear) * Math.cos(shear + lean));
  }

  private static double shearAngle(double frictionRatio, double rakeDeg) {
    return 45 + rakeDeg - Math.toDegrees(Math.atan(frictionRatio));
  }
}
