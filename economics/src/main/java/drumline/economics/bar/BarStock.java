package drumline.economics.bar;

import drumline.economics.Range;

/**
 * A bar and what each piece takes from it.
 *
 * @param barLengthMm length as bought
 * @param longestLoadMm longest bar that the machine loads; longer bars are sawn into equal lengths
 * @param remnantMm shortest end from which no piece can be made any more
 * @param firstFacingMm cut off the sawn end of each loaded bar before the first piece
 * @param pieceLengthMm length of the piece
 * @param facingMm faced off each piece, both ends together
 * @param kerfMm width of the cut-off tool
 * @param areaMm2 cross-section of the bar
 * @param densityKgPerDm3 density
 * @param partVolumeMm3 volume of the finished piece
 */
public record BarStock(
    double barLengthMm,
    double longestLoadMm,
    double remnantMm,
    double firstFacingMm,
    double pieceLengthMm,
    double facingMm,
    double kerfMm,
    double areaMm2,
    double densityKgPerDm3,
    double partVolumeMm3) {

  /**
   * Checks the quantities.
   *
   * @throws IllegalArgumentException if a length, the area, the density or the volume is not above
   *     0, an allowance is below 0, or the piece is bigger than the stock it takes
   */
  public BarStock {
    Range.positive("barLengthMm", barLengthMm);
    Range.positive("longestLoadMm", longestLoadMm);
    Range.notNegative("remnantMm", remnantMm);
    Range.notNegative("firstFacingMm", firstFacingMm);
    Range.positive("pieceLengthMm", pieceLengthMm);
    Range.notNegative("facingMm", facingMm);
    Range.notNegative("kerfMm", kerfMm);
    Range.positive("areaMm2", areaMm2);
    Range.positive("densityKgPerDm3", densityKgPerDm3);
    Range.positive("partVolumeMm3", partVolumeMm3);
    double stockMm3 = (pieceLengthMm + facingMm + kerfMm) * areaMm2;
    if (partVolumeMm3 > stockMm3) {
      throw new IllegalArgumentException(
          "partVolumeMm3: " + partVolumeMm3 + ", allowed: at most the stock, " + stockMm3);
    }
  }

  /** Length of bar that one piece takes. */
  public double stockPerPieceMm() {
    return pieceLengthMm + facingMm + kerfMm;
  }

  /** The same with the bar as bought of another length. */
  public BarStock withBarLengthMm(double newBarLengthMm) {
    return new BarStock(
        newBarLengthMm,
        longestLoadMm,
        remnantMm,
        firstFacingMm,
        pieceLengthMm,
        facingMm,
        kerfMm,
        areaMm2,
        densityKgPerDm3,
        partVolumeMm3);
  }
}
