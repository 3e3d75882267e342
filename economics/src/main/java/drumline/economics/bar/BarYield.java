package drumline.economics.bar;

/**
 * What comes out of a bar.
 *
 * <p>n = ⌊(L − r − a) / (l + f + w)⌋ pieces of each loaded length L; yield = n·l / L. A bar longer
 * than the machine loads is sawn into the fewest equal lengths that fit; the saw's own kerf is not
 * counted.
 *
 * <ul>
 *   <li>L loaded length, mm, above r + a + l + f + w
 *   <li>r remnant, a facing of a new bar's end, f facing of each piece, w kerf of the cut-off, mm,
 *       0 or more
 *   <li>l length of the piece, mm, above 0
 * </ul>
 *
 * Masses are per piece cut off, good or not. Bought = density·area·L / n. Chips are what the tools
 * take from the stock of one piece; ends are remnant and first facing, shared among the pieces.
 *
 * <p>Source: geometry; allowances for remnants in use: [WEB].
 *
 * @param loadsPerBarCount lengths that a bought bar is sawn into
 * @param loadedLengthMm length of each
 * @param piecesPerLoadCount pieces from each
 * @param yieldPct length of pieces over length of bar
 * @param boughtKgPerPiece bar bought for one piece
 * @param partKgPerPiece finished piece
 * @param chipsKgPerPiece chips, cut-off kerf included
 * @param endsKgPerPiece remnants and first facings
 * @param barsPer1000Count bought bars for 1000 pieces
 */
public record BarYield(
    int loadsPerBarCount,
    double loadedLengthMm,
    int piecesPerLoadCount,
    double yieldPct,
    double boughtKgPerPiece,
    double partKgPerPiece,
    double chipsKgPerPiece,
    double endsKgPerPiece,
    double barsPer1000Count) {

  private static final double MM3_PER_DM3 = 1e6;

  /** Guards the floor against a quotient that is a whole number but for rounding. */
  private static final double FLOOR_GUARD = 1e-9;

  /**
   * The yield of a bar.
   *
   * @throws IllegalArgumentException if a loaded length is too short for one piece
   */
  public static BarYield of(BarStock stock) {
    int loads = (int) Math.ceil(stock.barLengthMm() / stock.longestLoadMm() - FLOOR_GUARD);
    double loadedMm = stock.barLengthMm() / loads;
    double usableMm = loadedMm - stock.remnantMm() - stock.firstFacingMm();
    int pieces = (int) Math.floor(usableMm / stock.stockPerPieceMm() + FLOOR_GUARD);
    if (pieces < 1) {
      double leastMm = stock.remnantMm() + stock.firstFacingMm() + stock.stockPerPieceMm();
      throw new IllegalArgumentException(
          "barLengthMm: loaded length "
              + loadedMm
              + ", allowed: at least "
              + leastMm
              + " for one piece");
    }
    double kgPerMm = stock.areaMm2() * stock.densityKgPerDm3() / MM3_PER_DM3;
    double boughtKg = kgPerMm * loadedMm / pieces;
    double stockKg = kgPerMm * stock.stockPerPieceMm();
    double partKg = stock.partVolumeMm3() * stock.densityKgPerDm3() / MM3_PER_DM3;
    return new BarYield(
        loads,
        loadedMm,
        pieces,
        100 * pieces * stock.pieceLengthMm() / loadedMm,
        boughtKg,
        partKg,
        stockKg - partKg,
        boughtKg - stockKg,
        1000.0 / (pieces * loads));
  }

  /** What goes back as scrap metal for one piece: chips and ends. */
  public double scrapKgPerPiece() {
    return chipsKgPerPiece + endsKgPerPiece;
  }
}
