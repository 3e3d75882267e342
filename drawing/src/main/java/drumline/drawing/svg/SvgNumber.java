package drumline.drawing.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as SVG writes them: at most four decimals, no exponent, no trailing zeros. */
public final class SvgNumber {

  private SvgNumber() {}

  /**
   * The number as text.
   *
   * @throws IllegalArgumentException if it is not finite
   */
  public static String text(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("value: " + value + ", allowed: finite numbers");
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
