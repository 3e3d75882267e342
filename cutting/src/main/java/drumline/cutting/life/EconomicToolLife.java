package drumline.cutting.life;

import drumline.cutting.validity.Require;
import java.math.BigDecimal;

/**
 * Tool life that gives the most pieces, or the cheapest, when one tool alone counts.
 *
 * <p>T_rate = (1/n − 1)·tc; T_cost = (1/n − 1)·(tc + y/x), y price of an edge, x cost of a minute.
 *
 * <p>Source: [GM] Ghosh and Mallik, Manufacturing Science, problems 4.26 and 4.28.
 *
 * @param exponentRatio Taylor's n, above 0 and below 1
 * @param changeMin time tc to change the edge, 0 or more
 */
public record EconomicToolLife(double exponentRatio, double changeMin) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public EconomicToolLife {
    Require.inside("exponentRatio", exponentRatio, 0, 1);
    Require.notNegative("changeMin", changeMin);
  }

  /** Life for the highest output. */
  public double fastestMin() {
    return (1 / exponentRatio - 1) * changeMin;
  }

  /**
   * Life for the lowest cost.
   *
   * @param edgePrice price y of one edge, or of one regrind, 0 or more
   * @param machineRatePerHour cost of an hour of machine and labour, in the same currency, above 0
   * @throws IllegalArgumentException if a price is outside its range
   */
  public double cheapestMin(BigDecimal edgePrice, BigDecimal machineRatePerHour) {
    Require.notNegative("edgePrice", edgePrice.doubleValue());
    Require.positive("machineRatePerHour", machineRatePerHour.doubleValue());
    double edgeMin = 60 * edgePrice.doubleValue() / machineRatePerHour.doubleValue();
    return (1 / exponentRatio - 1) * (changeMin + edgeMin);
  }
}
