package drumline.economics.tool;

import drumline.economics.Range;
import java.math.BigDecimal;

/**
 * Tool life of least cost, and of most output, for one tool that sets the cycle.
 *
 * <p>T = (1/n − 1)·(tc + y/x) for least cost; T = (1/n − 1)·tc for most output.
 *
 * <ul>
 *   <li>T life, min; n Taylor's exponent, between 0 and 1
 *   <li>tc time to change the edge, min, 0 or more
 *   <li>y cost of an edge; x cost of a machine minute, above 0, same currency
 * </ul>
 *
 * <p>Source: [GM] ch. 4, examples 4.26 and 4.27.
 */
public final class EconomicLife {
  private EconomicLife() {}

  /**
   * Life of least cost in minutes.
   *
   * @throws IllegalArgumentException if n is not between 0 and 1, a time or cost is below 0, or the
   *     machine minute costs nothing
   */
  public static double leastCostMin(
      double exponentRatio, double changeMin, BigDecimal edgeCost, BigDecimal machinePerMinute) {
    double edge = Range.notNegative("edgeCost", edgeCost.doubleValue());
    double minute = Range.positive("machinePerMinute", machinePerMinute.doubleValue());
    return mostOutputMin(exponentRatio, changeMin + edge / minute);
  }

  /**
   * Life of most output in minutes.
   *
   * @throws IllegalArgumentException if n is not between 0 and 1 or the time is below 0
   */
  public static double mostOutputMin(double exponentRatio, double changeMin) {
    if (!(exponentRatio > 0 && exponentRatio < 1)) {
      throw new IllegalArgumentException(
          "exponentRatio: " + exponentRatio + ", allowed: between 0 and 1");
    }
    return (1 / exponentRatio - 1) * Range.notNegative("changeMin", changeMin);
  }
}
