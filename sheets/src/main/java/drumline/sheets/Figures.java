package drumline.sheets;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes figures the same way everywhere: decimal point, thin spaces between thousands. */
public final class Figures {
  /** Narrow space that keeps a figure on one line. */
  public static final char THIN_SPACE = '\u202f';

  /** Space between a figure and its unit. */
  public static final char NO_BREAK_SPACE = '\u00a0';

  private static final String NONE = "–";
  private static final int GROUP = 3;

  private Figures() {}

  /** A number with so many decimals, half up. */
  public static String number(double valueRatio, int decimalsCount) {
    return Double.isFinite(valueRatio)
        ? number(BigDecimal.valueOf(valueRatio), decimalsCount)
        : NONE;
  }

  /** An amount or number with so many decimals, half up. */
  public static String number(BigDecimal value, int decimalsCount) {
    String plain = value.setScale(decimalsCount, RoundingMode.HALF_UP).abs().toPlainString();
    int point = plain.indexOf('.');
    String whole = point < 0 ? plain : plain.substring(0, point);
    StringBuilder out = new StringBuilder(plain);
    for (int at = whole.length() - GROUP; at > 0; at -= GROUP) {
      out.insert(at, THIN_SPACE);
    }
    boolean below = value.setScale(decimalsCount, RoundingMode.HALF_UP).signum() < 0;
    return below ? "−" + out : out.toString();
  }

  /** A number with its unit. */
  public static String withUnit(double valueRatio, int decimalsCount, String unit) {
    return number(valueRatio, decimalsCount) + NO_BREAK_SPACE + unit;
  }
}
