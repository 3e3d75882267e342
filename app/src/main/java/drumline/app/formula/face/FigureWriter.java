package drumline.app.formula.face;

import drumline.app.formula.Measure;
import drumline.shop.quantity.MoneyPer;
import drumline.shop.quantity.QuantityKind;
import drumline.shop.quantity.QuantityWriter;
import drumline.shop.quantity.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Writes figures with their units.
 *
 * @param system metric or inch
 * @param currency currency of all money
 */
record FigureWriter(UnitSystem system, Optional<Currency> currency) {
  private static final int DIGITS = 5;
  private static final int MONEY_DECIMALS = 4;

  /** A value of a measure: a number, a whole number, money, words, or several of them. */
  String text(Measure measure, Object value) {
    if (value instanceof List<?> several) {
      return several.stream().map(one -> text(measure, one)).collect(Collectors.joining(", "));
    }
    if (value instanceof BigDecimal amount) {
      return money(amount, measure);
    }
    if (value instanceof Number number) {
      return number(measure, number.doubleValue());
    }
    return value.toString();
  }

  /** The same with all digits; several values joined by colons, as they are typed. */
  String exact(Measure measure, Object value) {
    if (value instanceof List<?> several) {
      return several.stream().map(one -> exact(measure, one)).collect(Collectors.joining(":"));
    }
    if (value instanceof Double number && measure.kind().isPresent() && measure != Measure.SHARE) {
      return QuantityWriter.exact(number / measure.scale(), measure.kind().orElseThrow(), system);
    }
    return value instanceof Double number
        ? (BigDecimal.valueOf(number).toPlainString() + " " + measure.ownUnit().orElse("")).strip()
        : text(measure, value);
  }

  /** A number in the formula's unit. */
  String number(Measure measure, double value) {
    if (measure.moneyPer().isPresent()) {
      return plain(value, DIGITS);
    }
    Optional<String> own = measure.ownUnit();
    if (own.isPresent() || measure.kind().isEmpty() || !Double.isFinite(value)) {
      int digits = measure == Measure.COUNT ? 15 : DIGITS;
      return (plain(value, digits) + " " + (Double.isFinite(value) ? own.orElse("") : "")).strip();
    }
    QuantityKind kind = measure.kind().orElseThrow();
    return QuantityWriter.rounded(value / measure.scale(), kind, system, digits(measure, value));
  }

  /**
   * Sizes to a tenth of a micrometre or a hundred-thousandth of an inch, the rest to five digits.
   */
  private int digits(Measure measure, double value) {
    if (measure != Measure.LENGTH || value == 0) {
      return DIGITS;
    }
    boolean inch = system == UnitSystem.INCH;
    double shown = Math.abs(inch ? value / 25.4 : value);
    int before = (int) Math.floor(Math.log10(shown)) + 1;
    return Math.min(12, Math.max(DIGITS, before + (inch ? 5 : 4)));
  }

  private String money(BigDecimal amount, Measure measure) {
    BigDecimal rounded = amount.setScale(MONEY_DECIMALS, RoundingMode.HALF_EVEN);
    BigDecimal shown = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
    BigDecimal cents = shown.scale() < 2 ? shown.setScale(2) : shown;
    String code = currency.map(Currency::getCurrencyCode).orElse("");
    return cents.toPlainString() + " " + code + measure.moneyPer().map(MoneyPer::symbol).orElse("");
  }

  private static String plain(double value, int digits) {
    if (!Double.isFinite(value)) {
      return Double.isNaN(value) ? "not defined" : value > 0 ? "without limit" : "minus infinity";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(digits));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
