package drumline.intake.form;

import drumline.shop.quantity.Money;
import drumline.shop.quantity.MoneyPer;
import java.math.BigDecimal;
import java.util.Optional;

/** Reads the prices of one entry, which must all be in one currency. */
public final class Prices {

  private String currency = "";

  /** A price that must be there; 0 where it is not. */
  public BigDecimal read(Block block, String key, MoneyPer per) {
    return block.require(key).map(field -> amount(field, per)).orElse(BigDecimal.ZERO);
  }

  /** A price, or 0 where the key is absent. */
  public BigDecimal readOrZero(Block block, String key, MoneyPer per) {
    return block.find(key).map(field -> amount(field, per)).orElse(BigDecimal.ZERO);
  }

  /** The price in a field; 0 where it cannot be read. */
  public BigDecimal amount(Field field, MoneyPer per) {
    Optional<Money> money = field.money(per);
    if (money.isEmpty()) {
      return BigDecimal.ZERO;
    }
    String code = money.get().currency().getCurrencyCode();
    if (currency.isEmpty()) {
      currency = code;
    } else if (!currency.equals(code)) {
      field.report(
          "other-currency", field.node().words(), currency + ", like the entry's other prices", "");
    }
    return money.get().amount();
  }

  /** The currency of the prices read so far. */
  public String currency() {
    return currency;
  }
}
