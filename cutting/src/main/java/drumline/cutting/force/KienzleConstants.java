package drumline.cutting.force;

import drumline.cutting.validity.Require;
import drumline.cutting.validity.Validity;

/**
 * How hard a material is to cut: its specific cutting force and how that grows for thin chips.
 *
 * <p>kc = kc1.1·h^−mc (N/mm²), h in mm.
 *
 * <p>Source: [TSCH] Dietrich and Tschätsch, 11th edition, main value of the specific cutting force.
 * Published constants for one material differ by up to 60 % between families; the two constants of
 * one pair must come from the same family ([BASIS] 1.1 and 13.7). Uncertainty ±20 %.
 *
 * @param kc11Mpa specific force kc1.1 at b = h = 1 mm, N/mm², above 0
 * @param mcRatio exponent mc, from 0 to below 1
 */
public record KienzleConstants(double kc11Mpa, double mcRatio) {
  /** Thinnest chip for which the power law was measured, from memory. */
  public static final double THINNEST_MM = 0.03;

  /** Thickest chip for which the power law was measured, from memory. */
  public static final double THICKEST_MM = 1.5;

  /**
   * @throws IllegalArgumentException if kc11Mpa is not above 0 or mcRatio is not in 0 … 0.99
   */
  public KienzleConstants {
    Require.positive("kc11Mpa", kc11Mpa);
    Require.between("mcRatio", mcRatio, 0, 0.99);
  }

  /**
   * Specific cutting force kc at one chip thickness, without corrections.
   *
   * @param thicknessMm chip thickness h, above 0
   * @throws IllegalArgumentException if thicknessMm is not above 0
   */
  public double specificForceMpa(double thicknessMm) {
    Require.positive("thicknessMm", thicknessMm);
    return kc11Mpa * Math.pow(thicknessMm, -mcRatio);
  }

  /**
   * Whether the chip is in the range 0.03 … 1.5 mm in which the law holds.
   *
   * @param thicknessMm chip thickness h, above 0
   * @throws IllegalArgumentException if thicknessMm is not above 0
   */
  public static Validity validity(double thicknessMm) {
    Require.positive("thicknessMm", thicknessMm);
    String consequence =
        thicknessMm < THINNEST_MM
            ? "the edge rubs and the force is higher than computed"
            : "the power law is extrapolated";
    return Validity.of("chip thickness", thicknessMm, THINNEST_MM, THICKEST_MM, "mm", consequence);
  }
}
