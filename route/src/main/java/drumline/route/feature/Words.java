package drumline.route.feature;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures as a process sheet writes them. */
final class Words {
  private Words() {}

  /** Up to three decimals, without trailing noughts. */
  static String mm(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Diameter. */
  static String dia(double value) {
    return "Ø" + mm(value);
  }

  /** Diameter by length. */
  static String dia(double diameter, double length) {
    return dia(diameter) + " × " + mm(length);
  }
}
