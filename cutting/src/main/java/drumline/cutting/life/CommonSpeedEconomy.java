package drumline.cutting.life;

import drumline.cutting.validity.Require;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Best common speed of a machine whose tools all share one speed: how much faster or slower than
 * the speed at which the lives are known.
 *
 * <p>With factor s: tj = tj0/s, Tj = Tj0·s^(−1/nj), governing cut t0/s. Fastest: Σ Aj·(1/nj −
 * 1)·s^(1/nj) = t0, Aj = tcj·tj0/Tj0. Cheapest: the same with (yj/x + tcj) for tcj.
 *
 * <p>Source: [BASIS] section 4, derived; reduces to {@link EconomicToolLife} for one tool.
 *
 * @param tools tools that cut, at least one
 * @param governingCutS cut t0 of the governing position at s = 1, above 0
 */
public record CommonSpeedEconomy(List<SharedTool> tools, double governingCutS) {
  /**
   * One of the tools, at s = 1.
   *
   * @param exponentRatio Taylor's n, above 0 and below 1
   * @param cutS time in cut for each piece, above 0
   * @param lifeMin tool life, above 0
   * @param changeMin time to change the tool, 0 or more
   * @param edgePrice price of one edge or regrind, 0 or more
   */
  public record SharedTool(
      double exponentRatio, double cutS, double lifeMin, double changeMin, BigDecimal edgePrice) {
    /**
     * @throws IllegalArgumentException if a value is outside its range
     */
    public SharedTool {
      Require.inside("exponentRatio", exponentRatio, 0, 1);
      Require.positive("cutS", cutS);
      Require.positive("lifeMin", lifeMin);
      Require.notNegative("changeMin", changeMin);
      Require.notNegative("edgePrice", edgePrice.doubleValue());
    }
  }

  /**
   * @throws IllegalArgumentException if there is no tool or the cut is not above 0
   */
  public CommonSpeedEconomy {
    tools = List.copyOf(tools);
    Require.atLeast("number of tools", tools.size(), 1);
    Require.positive("governingCutS", governingCutS);
  }

  /**
   * Factor s of the highest output.
   *
   * @throws IllegalArgumentException if no tool takes time to change
   */
  public double fastestRatio() {
    return solve(SharedTool::changeMin);
  }

  /**
   * Factor s of the lowest cost.
   *
   * @param machineRatePerHour cost of an hour of machine and labour, above 0
   * @throws IllegalArgumentException if the rate is not above 0 or no tool costs money or time
   */
  public double cheapestRatio(BigDecimal machineRatePerHour) {
    Require.positive("machineRatePerHour", machineRatePerHour.doubleValue());
    double perMin = machineRatePerHour.doubleValue() / 60;
    return solve(t -> t.changeMin() + t.edgePrice().doubleValue() / perMin);
  }

  /**
   * Time of a piece, cut of the governing position and lost for changes, at a factor.
   *
   * @param speedRatio factor s, above 0
   * @throws IllegalArgumentException if the factor is not above 0
   */
  public double perPieceS(double speedRatio) {
    Require.positive("speedRatio", speedRatio);
    double lostS =
        tools.stream()
            .mapToDouble(
                t ->
                    t.changeMin()
                        * t.cutS()
                        / t.lifeMin()
                        * Math.pow(speedRatio, 1 / t.exponentRatio() - 1))
            .sum();
    return governingCutS / speedRatio + lostS;
  }

  private double solve(ToDoubleFunction<SharedTool> burdenMin) {
    Require.positive("sum of the tools' burdens", tools.stream().mapToDouble(burdenMin).sum());
    double low = -20;
    double high = 20;
    for (int i = 0; i < 100; i++) {
      double middle = (low + high) / 2;
      if (slope(burdenMin, Math.exp(middle)) < governingCutS) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.exp((low + high) / 2);
  }

  private double slope(ToDoubleFunction<SharedTool> burdenMin, double speedRatio) {
    return tools.stream()
        .mapToDouble(
            t ->
                burdenMin.applyAsDouble(t)
                    * t.cutS()
                    / t.lifeMin()
                    * (1 / t.exponentRatio() - 1)
                    * Math.pow(speedRatio, 1 / t.exponentRatio()))
        .sum();
  }
}
