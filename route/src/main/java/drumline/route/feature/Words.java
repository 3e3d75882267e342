package drumline.route.feature;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures as a process sheet writes them. */
public final class Words {
  private Words() {}

  /** Up to three decimals, without trailing noughts. */
  public static String mm(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Diameter. */
  public static String dia(double value) {
    return "Ø" + mm(value);
  }

  /** Diameter by length. */
  public static String dia(double diameter, double length) {
    return dia(diameter) + " × " + mm(length);
  }
}
