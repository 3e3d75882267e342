package drumline.economics;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Arithmetic of amounts of money with measured quantities: decimal, 16 digits, so that shares add
 * up to their total to the last digit.
 */
public final class Amount {
  /** Digits that amounts are carried with. */
  public static final MathContext DIGITS = MathContext.DECIMAL64;

  /** Decimals that an amount per piece is kept with: millionths. */
  public static final int PER_PIECE_DECIMALS = 6;

  private Amount() {}

  /** An amount times a quantity. */
  public static BigDecimal times(BigDecimal amount, double quantityRatio) {
    return amount.multiply(BigDecimal.valueOf(quantityRatio), DIGITS);
  }

  /** An amount shared among a quantity. */
  public static BigDecimal over(BigDecimal amount, double quantityRatio) {
    return amount.divide(
        BigDecimal.valueOf(Range.positive("quantityRatio", quantityRatio)), DIGITS);
  }

  /** An amount per piece in millionths, half to even. */
  public static BigDecimal perPiece(BigDecimal amount) {
    return amount.setScale(PER_PIECE_DECIMALS, RoundingMode.HALF_EVEN);
  }
}
