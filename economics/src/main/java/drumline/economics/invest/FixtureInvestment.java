package drumline.economics.invest;

import drumline.economics.Range;

/**
 * How many pieces a year pay for a special tool, a form tool or a fixture.
 *
 * <p>N·a·(1 + t) = C·(I + T + D + M) + k·y.
 *
 * <ul>
 *   <li>N pieces in a year; a saving of wages per piece; t overhead on wages saved
 *   <li>C price; I interest, T taxes, D write-off, M maintenance, each a share of C in a year
 *   <li>k runs in a year; y cost of setting up for one
 * </ul>
 *
 * Source: [SHARMA] ch. 5, examples 5.20 and 5.25.
 *
 * @param savingPerPieceRatio a, in units of money
 * @param overheadPct t
 * @param yearlySharePct I + T + D + M
 * @param runsPerYearCount k
 * @param setUpCostRatio y, in units of money
 */
public record FixtureInvestment(
    double savingPerPieceRatio,
    double overheadPct,
    double yearlySharePct,
    double runsPerYearCount,
    double setUpCostRatio) {

  /**
   * Checks the quantities.
   *
   * @throws IllegalArgumentException if saving or yearly share are not above 0, or the rest below 0
   */
  public FixtureInvestment {
    Range.positive("savingPerPieceRatio", savingPerPieceRatio);
    Range.notNegative("overheadPct", overheadPct);
    Range.positive("yearlySharePct", yearlySharePct);
    Range.notNegative("runsPerYearCount", runsPerYearCount);
    Range.notNegative("setUpCostRatio", setUpCostRatio);
  }

  private double savedPerPiece() {
    return savingPerPieceRatio * (1 + overheadPct / 100);
  }

  /** Pieces in a year that just pay for a price. */
  public double piecesCount(double priceRatio) {
    return (priceRatio * yearlySharePct / 100 + runsPerYearCount * setUpCostRatio)
        / savedPerPiece();
  }

  /** Price that so many pieces in a year just pay for. */
  public double priceRatio(double piecesCount) {
    return (piecesCount * savedPerPiece() - runsPerYearCount * setUpCostRatio)
        / (yearlySharePct / 100);
  }

  /** What is left in a year with a price and so many pieces; below 0 for a loss. */
  public double surplusRatio(double priceRatio, double piecesCount) {
    return piecesCount * savedPerPiece()
        - priceRatio * yearlySharePct / 100
        - runsPerYearCount * setUpCostRatio;
  }
}
