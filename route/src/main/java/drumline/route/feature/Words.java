package drumline.route.feature;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures as a process sheet writes them. */
public final class Words {
  private Words() {}

  /** Up to three decimals, without trailing noughts. */
  public static String mm(double lengthMm) {
    BigDecimal rounded = BigDecimal.valueOf(lengthMm).setScale(3, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Diameter. */
  public static String dia(double diameterMm) {
    return "Ø" + mm(diameterMm);
  }

  /** Diameter by length. */
  public static String dia(double diameterMm, double lengthMm) {
    return dia(diameterMm) + " × " + mm(lengthMm);
  }
}
