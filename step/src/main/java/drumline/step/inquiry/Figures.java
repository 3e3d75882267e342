package drumline.step.inquiry;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Writes sizes in the file's own unit system.
 *
 * @param isInch inches or millimetres
 */
record Figures(boolean isInch) {
  private static final double INCH_MM = 25.4;

  /** A length with its unit, rounded to 0.1 µm or 0.00001 in. */
  String length(double mm) {
    return plain(isInch ? mm / INCH_MM : mm, isInch ? 5 : 4) + (isInch ? " in" : " mm");
  }

  static String plain(double value, int digits) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_EVEN);
    BigDecimal stripped = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
    return stripped.toPlainString();
  }

  /** Bar of at least this size: the next whole millimetre or sixteenth of an inch with stock. */
  double barMm(double leastMm) {
    double step = isInch ? INCH_MM / 16 : 1;
    return Math.ceil((leastMm + 0.2) / step - 1e-9) * step;
  }
}
