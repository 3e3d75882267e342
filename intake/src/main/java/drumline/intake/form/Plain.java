package drumline.intake.form;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as messages show them. */
public final class Plain {

  private static final int DECIMALS_COUNT = 6;

  private Plain() {}

  /** A number without exponent and trailing zeros, at most six decimals. */
  public static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS_COUNT, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
