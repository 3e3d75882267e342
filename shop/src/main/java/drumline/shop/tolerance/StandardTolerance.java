package drumline.shop.tolerance;

import java.util.OptionalDouble;

/**
 * Widths of the standard tolerance grades IT1 to IT18.
 *
 * <p>Source: [ISO-286-1] 2010, table 1, in the data file {@code it-grades.csv}; sizes to 500 mm.
 */
public final class StandardTolerance {

  /** The finest grade, IT1. */
  public static final int FINEST = 1;

  /** The coarsest grade, IT18. */
  public static final int COARSEST = 18;

  /** Sizes up to here have no grades coarser than IT13. */
  private static final double SMALL_MM = 1;

  private static final SizeRanges RANGES = SizeRanges.read("it-grades.csv");

  private StandardTolerance() {}

  /**
   * Width of a grade at a nominal size, mm.
   *
   * @param grade 1 to 18; to 1 mm only to 13
   * @param nominalMm above 0 to 500 mm
   * @return empty outside those ranges
   */
  public static OptionalDouble findWidthMm(int grade, double nominalMm) {
    boolean known = grade >= FINEST && grade <= (nominalMm <= SMALL_MM ? 13 : COARSEST);
    if (!known) {
      return OptionalDouble.empty();
    }
    return RANGES
        .findRow(nominalMm)
        .map(row -> OptionalDouble.of(row.figure("it" + grade + "_um") / 1000))
        .orElse(OptionalDouble.empty());
  }

  /**
   * Width of a grade at a nominal size, mm.
   *
   * @throws IllegalArgumentException if grade is outside 1 to 18 (to 1 mm: 1 to 13) or nominalMm
   *     outside above 0 to 500
   */
  public static double widthMm(int grade, double nominalMm) {
    return findWidthMm(grade, nominalMm)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "grade is "
                        + grade
                        + ", nominalMm is "
                        + nominalMm
                        + "; allowed: grade 1 to 18 (to 1 mm: 1 to 13), nominalMm above 0 to 500"));
  }
}
