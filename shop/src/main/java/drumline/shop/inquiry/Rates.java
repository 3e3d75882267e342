package drumline.shop.inquiry;

import java.math.BigDecimal;
import java.util.Map;

/**
 * The plant's own rates.
 *
 * @param currency ISO 4217 code of the study
 * @param exchange value of one unit of another currency in the study's, by ISO 4217 code
 * @param labourPerHour one person's hour
 * @param setUpPerHour an hour of setting up, person and machine
 * @param scrapPct share of pieces that are not good
 */
public record Rates(
    String currency,
    Map<String, BigDecimal> exchange,
    BigDecimal labourPerHour,
    BigDecimal setUpPerHour,
    double scrapPct) {

  /** Copies the map. */
  public Rates {
    exchange = Map.copyOf(exchange);
  }

  /**
   * An amount in the study's currency.
   *
   * @throws IllegalArgumentException if there is no rate for the currency
   */
  public BigDecimal convert(BigDecimal amount, String fromCurrency) {
    if (fromCurrency.equals(currency)) {
      return amount;
    }
    BigDecimal rate = exchange.get(fromCurrency);
    if (rate == null) {
      throw new IllegalArgumentException(
          "fromCurrency: " + fromCurrency + ", allowed: " + currency + " or " + exchange.keySet());
    }
    return amount.multiply(rate);
  }
}
