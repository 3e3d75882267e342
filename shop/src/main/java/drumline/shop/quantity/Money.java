package drumline.shop.quantity;

import java.math.BigDecimal;
import java.util.Currency;

/**
 * An amount of money in one currency, exact in decimal.
 *
 * @param amount any decimal number, may be negative
 * @param currency ISO 4217 currency
 */
public record Money(BigDecimal amount, Currency currency) {

  /**
   * The sum of two amounts.
   *
   * @throws IllegalArgumentException if the currencies differ
   */
  public Money plus(Money other) {
    if (!currency.equals(other.currency)) {
      throw new IllegalArgumentException(
          "currency is " + other.currency + "; allowed: " + currency);
    }
    return new Money(amount.add(other.amount), currency);
  }

  /** This amount taken a number of times. */
  public Money times(BigDecimal count) {
    return new Money(amount.multiply(count), currency);
  }

  /** The amount and its currency code, e.g. {@code 1.85 EUR}. */
  public String toText() {
    return amount.toPlainString() + " " + currency.getCurrencyCode();
  }
}
