package drumline.economics.invest;

import drumline.economics.Range;

/**
 * The lot at which set-up and stock together cost least.
 *
 * <p>N = √(2·A·R / (i·C)); cost of a year K(N) = A·C + R·A/N + i·C·N/2.
 *
 * <ul>
 *   <li>A pieces in a year, above 0; N pieces in a lot
 *   <li>R cost of one set-up or order; C cost of a piece, above 0; same currency
 *   <li>i share of the piece's cost that a year in stock costs, above 0
 * </ul>
 *
 * Source: [SHARMA] ch. 5.
 */
public final class EconomicLot {
  private EconomicLot() {}

  /**
   * The lot of least cost in pieces.
   *
   * @throws IllegalArgumentException if volume, piece cost or share are not above 0, or the set-up
   *     costs less than 0
   */
  public static double piecesCount(
      double perYearCount, double setUpCostRatio, double pieceCostRatio, double stockPct) {
    Range.positive("perYearCount", perYearCount);
    Range.notNegative("setUpCostRatio", setUpCostRatio);
    Range.positive("pieceCostRatio", pieceCostRatio);
    Range.positive("stockPct", stockPct);
    return Math.sqrt(2 * perYearCount * setUpCostRatio / (stockPct / 100 * pieceCostRatio));
  }

  /**
   * Cost of a year in lots of a size, in the unit of the costs given.
   *
   * @throws IllegalArgumentException as {@link #piecesCount}, or if the lot is not above 0
   */
  public static double yearCostRatio(
      double perYearCount,
      double lotCount,
      double setUpCostRatio,
      double pieceCostRatio,
      double stockPct) {
    Range.positive("lotCount", lotCount);
    Range.positive("stockPct", stockPct);
    return Range.positive("perYearCount", perYearCount)
            * Range.positive("pieceCostRatio", pieceCostRatio)
        + Range.notNegative("setUpCostRatio", setUpCostRatio) * perYearCount / lotCount
        + stockPct / 100 * pieceCostRatio * lotCount / 2;
  }
}
