package drumline.drawing;

import drumline.shop.tolerance.Tolerance;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Units in which a drawing's dimensions are written. */
public enum DrawingUnits {
  /** Millimetres, three decimals at most. */
  METRIC(1, 3, "mm"),
  /** Inches, four decimals at most. */
  INCH(25.4, 4, "in");

  private final double mmPerUnit;
  private final int decimals;
  private final String symbol;

  DrawingUnits(double mmPerUnit, int decimals, String symbol) {
    this.mmPerUnit = mmPerUnit;
    this.decimals = decimals;
    this.symbol = symbol;
  }

  /** Unit symbol. */
  public String symbol() {
    return symbol;
  }

  /** A length as a dimension is written: no unit, no trailing zeros. */
  public String length(double valueMm) {
    BigDecimal value =
        BigDecimal.valueOf(valueMm / mmPerUnit).setScale(decimals, RoundingMode.HALF_UP);
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  /** A length with its unit. */
  public String lengthWithUnit(double valueMm) {
    return length(valueMm) + " " + symbol;
  }

  /** A length to whole millimetres, or to hundredths of an inch, without its unit. */
  public String coarse(double valueMm) {
    return this == METRIC
        ? String.format(Locale.ROOT, "%.0f", valueMm)
        : String.format(Locale.ROOT, "%.2f", valueMm / mmPerUnit);
  }

  /** A cutting speed in m/min, or in ft/min, without its unit. */
  public String speed(double valueMPerMin) {
    return String.format(
        Locale.ROOT, "%.0f", this == METRIC ? valueMPerMin : valueMPerMin * 1000 / 304.8);
  }

  /** Unit of cutting speed. */
  public String speedSymbol() {
    return this == METRIC ? "m/min" : "ft/min";
  }

  /** A feed in mm or in inches for each turn, without its unit. */
  public String feed(double valueMmPerRev) {
    return this == METRIC
        ? String.format(Locale.ROOT, "%.3f", valueMmPerRev)
        : String.format(Locale.ROOT, "%.4f", valueMmPerRev / mmPerUnit);
  }

  /**
   * A tolerance as it stands behind a dimension: class codes stay, deviations follow the units; a
   * general tolerance is not repeated.
   */
  public String tolerance(Tolerance tolerance) {
    String text = tolerance.text().strip();
    if (text.isEmpty() || isGeneral(tolerance)) {
      return "";
    }
    if (Character.isLetter(text.codePointAt(0))) {
      return text;
    }
    if (this == METRIC) {
      return text.replace('-', '−');
    }
    double lower = tolerance.lowerDeviationMm();
    double upper = tolerance.upperDeviationMm();
    return Math.abs(lower + upper) < 1e-9
        ? "±" + length(upper)
        : signed(upper) + "/" + signed(lower);
  }

  /** Whether it is one of the general tolerances that a print states once. */
  public static boolean isGeneral(Tolerance tolerance) {
    return tolerance.text().contains("2768") || tolerance.text().contains("22081");
  }

  private String signed(double valueMm) {
    return (valueMm > 0 ? "+" : "") + length(valueMm).replace('-', '−');
  }
}
