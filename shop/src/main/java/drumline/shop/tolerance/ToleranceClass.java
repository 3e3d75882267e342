package drumline.shop.tolerance;

import drumline.shop.quantity.FigureTable;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An ISO 286 tolerance class such as H7 for a hole or h9 for a shaft.
 *
 * <p>The fundamental deviation is the limit nearer to the nominal size; the other limit lies one
 * standard tolerance away. Holes A to H mirror the shafts: EI = −es. Holes K, M, N to IT8 and P to
 * ZC to IT7 have ES = −ei + Δ, Δ = IT(n) − IT(n−1), above 3 mm; coarser ones ES = −ei, but N above
 * IT8 has ES = 0 above 3 mm, and K above IT8 is only defined to 3 mm. JS and js lie evenly about
 * the nominal size and are not rounded.
 *
 * <p>Source: [ISO-286-1] 2010, tables 1 to 5; figures in {@code fundamental-deviations.csv}. Known
 * limits: sizes to 500 mm; cd, ef, fg only to 10 mm.
 *
 * @param letters position of the tolerance: capitals for a hole, small letters for a shaft
 * @param grade number of the standard tolerance grade, 1 to 18
 */
public record ToleranceClass(String letters, int grade) {

  /** The standard tabulates Δ from this grade on. */
  private static final int FINEST_SHIFTED = 3;

  private static final Pattern CODE = Pattern.compile("([A-Za-z]{1,2})\\s?(\\d{1,2})");
  private static final SizeRanges RANGES = SizeRanges.read("fundamental-deviations.csv");
  private static final List<String> REFLECTED =
      List.of("a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h");
  private static final List<String> RAISED =
      List.of("k", "m", "n", "p", "r", "s", "t", "u", "v", "x", "y", "z", "za", "zb", "zc");

  /** Letters of all shafts; the holes have the same in capitals. */
  static List<String> shaftLetters() {
    return List.of(
        "a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h", "j", "js", "k", "m", "n", "p",
        "r", "s", "t", "u", "v", "x", "y", "z", "za", "zb", "zc");
  }

  /** Takes a code apart, without asking whether its letters exist. */
  public static Optional<ToleranceClass> find(String code) {
    Matcher matcher = CODE.matcher(code.strip());
    return matcher.matches()
        ? Optional.of(new ToleranceClass(matcher.group(1), Integer.parseInt(matcher.group(2))))
        : Optional.empty();
  }

  /** Whether the letters are those of the standard, all capitals or all small. */
  public boolean lettersKnown() {
    return shaftLetters().contains(lower()) && (isHole() || letters.equals(lower()));
  }

  /** Whether it is written in capitals, so for a hole. */
  public boolean isHole() {
    return letters.equals(letters.toUpperCase(Locale.ROOT));
  }

  /**
   * The deviations of this class at a nominal size.
   *
   * @param nominalMm above 0 to 500 mm
   * @return empty where the standard, or our copy of it, gives none
   */
  public Optional<Tolerance> findAt(double nominalMm) {
    OptionalDouble width = StandardTolerance.findWidthMm(grade, nominalMm);
    Optional<FigureTable.Row> row = RANGES.findRow(nominalMm);
    if (width.isEmpty() || row.isEmpty() || !lettersKnown()) {
      return Optional.empty();
    }
    double widthMm = width.getAsDouble();
    return switch (side()) {
      case EVEN -> Optional.of(tolerance(-widthMm / 2, widthMm / 2));
      case ABOVE -> lower(row.get(), nominalMm).map(l -> tolerance(l, l + widthMm));
      case BELOW -> upper(row.get(), nominalMm).map(u -> tolerance(u - widthMm, u));
    };
  }

  private enum Side {
    ABOVE,
    BELOW,
    EVEN
  }

  private Side side() {
    if (lower().equals("js")) {
      return Side.EVEN;
    }
    boolean earlyLetter = REFLECTED.contains(lower());
    return earlyLetter == isHole() ? Side.ABOVE : Side.BELOW;
  }

  private Tolerance tolerance(double lowerMm, double upperMm) {
    return new Tolerance(
        letters + grade, rounded(lowerMm), rounded(upperMm), OptionalInt.of(grade));
  }

  private Optional<Double> lower(FigureTable.Row row, double nominalMm) {
    if (isHole()) {
      return shaftUm(row, nominalMm).map(es -> -es / 1000);
    }
    return shaftUm(row, nominalMm).map(ei -> ei / 1000);
  }

  private Optional<Double> upper(FigureTable.Row row, double nominalMm) {
    if (!isHole()) {
      return shaftUm(row, nominalMm).map(es -> es / 1000);
    }
    if (letters.equals("J")) {
      return cell(row, "J" + grade).map(es -> es / 1000);
    }
    return raisedHoleUm(row, nominalMm).map(es -> es / 1000);
  }

  private Optional<Double> raisedHoleUm(FigureTable.Row row, double nominalMm) {
    boolean small = nominalMm <= 3;
    if (letters.equals("K") && grade > 8) {
      return small ? Optional.of(0.0) : Optional.empty();
    }
    if (letters.equals("N") && grade > 8 && !small) {
      return Optional.of(0.0);
    }
    if (letters.equals("N") && grade > 8 && nominalMm <= 1) {
      return Optional.empty();
    }
    if (letters.equals("M") && grade == 6 && nominalMm > 250 && nominalMm <= 315) {
      return Optional.of(-9.0);
    }
    int lastShifted = RAISED.indexOf(lower()) < RAISED.indexOf("p") ? 8 : 7;
    if (!small && grade < FINEST_SHIFTED) {
      return Optional.empty();
    }
    boolean shifted = !small && grade <= lastShifted;
    double shiftUm = shifted ? stepUm(nominalMm) : 0;
    return cell(row, lower()).map(ei -> -ei + shiftUm);
  }

  /** Δ = IT(n) − IT(n−1), µm. */
  private double stepUm(double nominalMm) {
    double widthMm = StandardTolerance.widthMm(grade, nominalMm);
    return (widthMm - StandardTolerance.widthMm(grade - 1, nominalMm)) * 1000;
  }

  private Optional<Double> shaftUm(FigureTable.Row row, double nominalMm) {
    if (lower().equals("j")) {
      return grade >= 5 && grade <= 8 ? cell(row, "j" + grade) : Optional.empty();
    }
    if (lower().equals("k") && (grade < 4 || grade > 7)) {
      return Optional.of(0.0);
    }
    boolean loose = lower().equals("a") || lower().equals("b");
    return loose && nominalMm <= 1 ? Optional.empty() : cell(row, lower());
  }

  private static Optional<Double> cell(FigureTable.Row row, String column) {
    if (!row.cells().containsKey(column)) {
      return Optional.empty();
    }
    OptionalDouble figure = row.findFigure(column);
    return figure.isPresent() ? Optional.of(figure.getAsDouble()) : Optional.empty();
  }

  private static double rounded(double mm) {
    return Math.round(mm * 1e5) / 1e5;
  }

  private String lower() {
    return letters.toLowerCase(Locale.ROOT);
  }
}
