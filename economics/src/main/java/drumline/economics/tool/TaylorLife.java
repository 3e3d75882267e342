package drumline.economics.tool;

import drumline.economics.Range;
import drumline.shop.material.CuttingWindow.TaylorConstants;

/**
 * How long an edge lasts at a cutting speed.
 *
 * <p>T = (C / v)^(1/n), from v·T^n = C.
 *
 * <ul>
 *   <li>T life, min of cutting
 *   <li>v cutting speed, m/min, above 0
 *   <li>C cutting speed for a life of one minute, m/min
 *   <li>n exponent, between 0 and 1
 * </ul>
 *
 * Far below the speeds that C and n were measured at, the formula promises lives that no edge
 * reaches: see {@link ToolWear}.
 *
 * <p>Source: [GM] ch. 4; exponents and constants come with the material.
 */
public final class TaylorLife {
  private TaylorLife() {}

  /**
   * Life in minutes.
   *
   * @throws IllegalArgumentException if the speed or C is not above 0, or n not between 0 and 1
   */
  public static double lifeMin(TaylorConstants constants, double speedMPerMin) {
    Range.positive("speedMPerMin", speedMPerMin);
    double c = Range.positive("constantMPerMin", constants.constantMPerMin());
    return Math.pow(c / speedMPerMin, 1 / exponent(constants.exponentRatio()));
  }

  /** Cutting speed in m/min at which an edge lasts so long: v = C / T^n. */
  public static double speedMPerMin(TaylorConstants constants, double lifeMin) {
    double n = exponent(constants.exponentRatio());
    return constants.constantMPerMin() / Math.pow(Range.positive("lifeMin", lifeMin), n);
  }

  private static double exponent(double exponentRatio) {
    if (!(exponentRatio > 0 && exponentRatio < 1)) {
      throw new IllegalArgumentException(
          "exponentRatio: " + exponentRatio + ", allowed: between 0 and 1");
    }
    return exponentRatio;
  }
}
