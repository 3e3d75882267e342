package drumline.shop.tolerance;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Deviations of sizes that carry no tolerance of their own.
 *
 * <p>Source: [ISO-2768-1] 1989, table 1, linear sizes without broken edges; from memory, in {@code
 * general-tolerances.csv}. Known limits: angles and broken edges are not covered.
 */
public final class GeneralTolerance {

  /** Below this size the standard wants the deviation beside the size. */
  private static final double SMALLEST_MM = 0.5;

  private static final SizeRanges RANGES = SizeRanges.read("general-tolerances.csv");

  private GeneralTolerance() {}

  /**
   * The deviations of a class at a nominal size.
   *
   * @param text the note as written on the print
   * @param letter {@code f} fine, {@code m} medium, {@code c} coarse, {@code v} very coarse
   * @param nominalMm 0.5 to 4000 mm
   * @return empty where the standard gives none
   */
  public static Optional<Tolerance> find(String text, char letter, double nominalMm) {
    if ("fmcv".indexOf(letter) < 0) {
      return Optional.empty();
    }
    double inRangeMm = nominalMm == SMALLEST_MM ? Math.nextUp(nominalMm) : nominalMm;
    return RANGES
        .findRow(inRangeMm)
        .flatMap(
            row -> {
              var deviation = row.findFigure(letter + "_mm");
              return deviation.isPresent()
                  ? Optional.of(deviation.getAsDouble())
                  : Optional.<Double>empty();
            })
        .map(mm -> new Tolerance(text, -mm, mm, OptionalInt.empty()));
  }
}
