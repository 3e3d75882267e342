package drumline.intake.head;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Range;
import drumline.shop.inquiry.Rates;
import drumline.shop.inquiry.Today;
import drumline.shop.quantity.Money;
import drumline.shop.quantity.MoneyPer;
import drumline.shop.quantity.QuantityKind;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads the plant's rates and how the piece is made today. */
public final class RatesForm {

  /** Keys of the rates. */
  public static final Form FORM =
      Form.of("rates", "currency", "exchange", "labour", "set-up", "scrap");

  /** Keys of today's way. */
  public static final Form TODAY = Form.of("today", "how", "cycle", "cost");

  private static final int MOST_DIGITS_COUNT = 12;

  private RatesForm() {}

  /** Reads the rates. */
  public static Rates read(Block block) {
    String currency = block.require("currency").map(RatesForm::currency).orElse("");
    Map<String, BigDecimal> exchange = new LinkedHashMap<>();
    block
        .find("exchange")
        .ifPresent(
            field -> field.named().forEach(n -> rate(n).ifPresent(r -> exchange.put(n.name(), r))));
    BigDecimal labour = perHour(block, "labour", currency);
    BigDecimal setUp = perHour(block, "set-up", currency);
    double scrap = block.quantity("scrap", QuantityKind.RATIO, Range.between(0, 0.99), 0.0);
    return new Rates(currency, exchange, labour, setUp, percent(scrap));
  }

  /** A ratio as per cent, free of binary noise in the last digits. */
  public static double percent(double ratio) {
    return Double.isNaN(ratio) ? ratio : Math.rint(ratio * 1e12) / 1e10;
  }

  private static String currency(Field field) {
    if (!isCode(field.text())) {
      field.report(
          "currency-unknown", field.node().words(), "an ISO 4217 code, such as EUR or USD", "");
      return "";
    }
    return field.text();
  }

  private static boolean isCode(String text) {
    return Currency.getAvailableCurrencies().stream()
        .anyMatch(c -> c.getCurrencyCode().equals(text));
  }

  private static Optional<BigDecimal> rate(Field.Named named) {
    if (!isCode(named.name())) {
      named
          .field()
          .report(
              "currency-unknown",
              "\"" + named.name() + "\"",
              "an ISO 4217 code, such as EUR or USD",
              "");
      return Optional.empty();
    }
    double value = named.field().number(Range.above0To(1e6));
    String text = named.field().text();
    return Double.isNaN(value) || text.length() > MOST_DIGITS_COUNT
        ? Optional.empty()
        : Optional.of(new BigDecimal(text.replace(" ", "")));
  }

  private static BigDecimal perHour(Block block, String key, String currency) {
    Optional<Field> field = block.require(key);
    Optional<Money> money = field.flatMap(f -> f.money(MoneyPer.HOUR));
    if (money.isPresent()
        && !currency.isEmpty()
        && !money.get().currency().getCurrencyCode().equals(currency)) {
      field
          .get()
          .report(
              "other-currency",
              field.get().node().words(),
              "an amount in " + currency + ", the currency of the rates",
              "");
    }
    return money.map(Money::amount).orElse(BigDecimal.ZERO);
  }

  /** Reads today's way. */
  public static Today readToday(Block block) {
    String how = block.text("how");
    double cycleS = block.quantity("cycle", QuantityKind.TIME, Range.POSITIVE, 0.0);
    Optional<Money> cost = block.require("cost").flatMap(f -> f.money(MoneyPer.PIECE));
    return new Today(
        how,
        cycleS,
        cost.map(Money::amount).orElse(BigDecimal.ZERO),
        cost.map(m -> m.currency().getCurrencyCode()).orElse(""));
  }
}
