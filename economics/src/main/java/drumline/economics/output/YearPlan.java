package drumline.economics.output;

import drumline.economics.Range;

/**
 * What is asked of the machine in a year.
 *
 * @param goodPerYearCount good pieces wanted in a year
 * @param goodPerLotCount good pieces from one set-up
 * @param plannedH hours that the plant works in a year
 * @param setUpH hours of one set-up
 * @param startUpScrapPerLotCount pieces lost at the start of each lot
 */
public record YearPlan(
    long goodPerYearCount,
    long goodPerLotCount,
    double plannedH,
    double setUpH,
    long startUpScrapPerLotCount) {

  /**
   * Checks the quantities.
   *
   * @throws IllegalArgumentException if volume, lot or hours are not above 0, or the rest below 0
   */
  public YearPlan {
    Range.positive("goodPerYearCount", (double) goodPerYearCount);
    Range.positive("goodPerLotCount", (double) goodPerLotCount);
    Range.positive("plannedH", plannedH);
    Range.notNegative("setUpH", setUpH);
    Range.notNegative("startUpScrapPerLotCount", (double) startUpScrapPerLotCount);
  }

  /** Lots in a year: a part of a lot needs a set-up too. */
  public long lotsCount() {
    return (goodPerYearCount + goodPerLotCount - 1) / goodPerLotCount;
  }
}
