package drumline.economics.cost;

import drumline.economics.Amount;
import drumline.economics.Range;
import drumline.economics.bar.BarYield;
import java.math.BigDecimal;

/**
 * What bar costs and what comes back for it.
 *
 * @param barPerKg price of bar
 * @param scrapPerKg what clean chips and ends bring
 */
public record MaterialPrice(BigDecimal barPerKg, BigDecimal scrapPerKg) {

  /**
   * Checks the prices.
   *
   * @throws IllegalArgumentException if a price is below 0
   */
  public MaterialPrice {
    Range.notNegative("barPerKg", barPerKg);
    Range.notNegative("scrapPerKg", scrapPerKg);
  }

  /** Material of one piece cut off: bar bought less chips and ends sold. */
  public BigDecimal perPiece(BarYield yield) {
    return Amount.times(barPerKg, yield.boughtKgPerPiece())
        .subtract(Amount.times(scrapPerKg, yield.scrapKgPerPiece()));
  }
}
