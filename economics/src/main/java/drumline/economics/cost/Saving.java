package drumline.economics.cost;

import java.math.BigDecimal;

/**
 * The new way against today's.
 *
 * @param currency ISO 4217 code
 * @param todayPerPiece what a piece costs today
 * @param newPerPiece what it would cost
 * @param perYear difference times pieces in a year; below 0 when the new way costs more
 */
public record Saving(
    String currency, BigDecimal todayPerPiece, BigDecimal newPerPiece, BigDecimal perYear) {

  /** The saving with a piece cost and a yearly volume of good pieces. */
  public static Saving of(PieceCost cost, BigDecimal todayPerPiece, long goodPerYearCount) {
    BigDecimal perPiece = todayPerPiece.subtract(cost.total());
    return new Saving(
        cost.currency(),
        todayPerPiece,
        cost.total(),
        perPiece.multiply(BigDecimal.valueOf(goodPerYearCount)));
  }

  /** Whether the new way costs less. */
  public boolean isThere() {
    return perYear.signum() > 0;
  }
}
