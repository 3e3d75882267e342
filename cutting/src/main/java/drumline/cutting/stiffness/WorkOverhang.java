package drumline.cutting.stiffness;

import drumline.cutting.validity.Require;
import drumline.cutting.validity.Validity;

/**
 * Whether work that stands out of the collet is stiff enough by the rule of thumb.
 *
 * <p>l/d up to 3 rough, up to 4 finish, up to 6 with the pick-up spindle holding the front.
 *
 * <p>Source: [BASIS] sections 6 and 7.5; from memory, common practice. {@link BendingDeflection}
 * gives the figure.
 */
public enum WorkOverhang {
  /** Roughing, free end. */
  ROUGH(3),
  /** Finishing, free end. */
  FINISH(4),
  /** Front end held. */
  HELD(6);

  private final double longestRatio;

  WorkOverhang(double longestRatio) {
    this.longestRatio = longestRatio;
  }

  /** Usual limit of overhang to diameter. */
  public double longestRatio() {
    return longestRatio;
  }

  /**
   * Compares an overhang with the limit.
   *
   * @param overhangMm overhang l from the collet, above 0
   * @param diameterMm smallest diameter d on the way, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public Validity validity(double overhangMm, double diameterMm) {
    Require.positive("overhangMm", overhangMm);
    Require.positive("diameterMm", diameterMm);
    return Validity.of(
        "overhang to diameter",
        overhangMm / diameterMm,
        0,
        longestRatio,
        "",
        "the work is likely to bend or chatter");
  }
}
