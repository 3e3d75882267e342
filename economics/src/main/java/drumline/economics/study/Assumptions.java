package drumline.economics.study;

import drumline.economics.Range;
import java.math.BigDecimal;
import java.util.List;

/**
 * What a cost study takes for granted where nobody said otherwise.
 *
 * @param firstFacingMm cut off the sawn end of each loaded bar
 * @param stopRestartMin minutes to stop, start again and check the first piece, for each tool stop
 * @param longestLifeMin longest life of an edge, in minutes of cutting, that the plan counts on
 * @param startUpScrapPerLotCount pieces lost at the start of each lot
 * @param writeOffYearsCount years over which the machine's price is written off in its hour rate
 */
public record Assumptions(
    double firstFacingMm,
    double stopRestartMin,
    double longestLifeMin,
    long startUpScrapPerLotCount,
    double writeOffYearsCount) {

  /**
   * Checks the quantities.
   *
   * @throws IllegalArgumentException if life or years are not above 0, or anything is below 0
   */
  public Assumptions {
    Range.notNegative("firstFacingMm", firstFacingMm);
    Range.notNegative("stopRestartMin", stopRestartMin);
    Range.positive("longestLifeMin", longestLifeMin);
    Range.notNegative("startUpScrapPerLotCount", (double) startUpScrapPerLotCount);
    Range.positive("writeOffYearsCount", writeOffYearsCount);
  }

  /** What is usual in the trade. Source: common practice, from memory, not verified. */
  public static Assumptions usual() {
    return new Assumptions(3, 2, 480, 20, 8);
  }

  /** The assumptions as sentences with their values. */
  public List<String> words() {
    return List.of(
        line("Facing of a new bar's sawn end: %s mm", firstFacingMm),
        line("Stop, restart and first-piece check at each tool stop: %s min", stopRestartMin),
        line("Longest edge life counted on: %s min of cutting", longestLifeMin),
        line("Pieces lost at the start of each lot: %s", (double) startUpScrapPerLotCount),
        line("Write-off of the machine's price: %s years", writeOffYearsCount));
  }

  private static String line(String pattern, double value) {
    return String.format(pattern, BigDecimal.valueOf(value).stripTrailingZeros().toPlainString());
  }
}
