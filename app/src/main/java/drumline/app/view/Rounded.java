package drumline.app.view;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Figures as they are handed to a page: no more decimals than they deserve. */
final class Rounded {
  private static final int MONEY_DECIMALS = 2;
  private static final int PIECE_DECIMALS = 4;

  private Rounded() {}

  /** Half up, to a number of decimals; what is no number stays so. */
  static double of(double value, int decimals) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue()
        : value;
  }

  /** Seconds, to the millisecond. */
  static double seconds(double valueS) {
    return of(valueS, 3);
  }

  /** Money of a piece. */
  static BigDecimal perPiece(BigDecimal amount) {
    return amount.setScale(PIECE_DECIMALS, RoundingMode.HALF_UP);
  }

  /** Other money. */
  static BigDecimal money(BigDecimal amount) {
    return amount.setScale(MONEY_DECIMALS, RoundingMode.HALF_UP);
  }

  /** An enum's name in lower case with blanks. */
  static String words(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** An enum's name in lower case with hyphens. */
  static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
