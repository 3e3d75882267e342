package drumline.shop.quantity;

import drumline.shop.quantity.Parsed.Reason;
import drumline.shop.quantity.Parsed.Refused;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Currency;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads money the way people write it, such as {@code 1.85 EUR}, {@code EUR 1.85}, {@code 95 EUR/h}
 * or {@code 1.10 USD/lb}; exact in decimal.
 *
 * <p>The currency must be an ISO 4217 code or a sign that stands for one currency only.
 */
public final class MoneyReader {

  private static final String NUMBER = "([+\\-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+))";
  private static final String CURRENCY = "([A-Za-z]{3}|[€£$¥])";
  private static final Pattern AFTER =
      Pattern.compile(NUMBER + "\\s*" + CURRENCY + "(?:\\s*(?:/|per )\\s*(\\S+))?");
  private static final Pattern BEFORE =
      Pattern.compile(CURRENCY + "\\s*" + NUMBER + "(?:\\s*(?:/|per )\\s*(\\S+))?");
  private static final Pattern ONLY_NUMBER = Pattern.compile(NUMBER);
  private static final Map<String, String> SIGNS = Map.of("€", "EUR", "£", "GBP");

  private MoneyReader() {}

  /**
   * Reads one amount.
   *
   * @param text what a person wrote
   * @param per what the amount must pay for; the answer is for one of it
   */
  public static MoneyParsed read(String text, MoneyPer per) {
    String trimmed = text.strip();
    Matcher after = AFTER.matcher(trimmed);
    if (after.matches()) {
      return amount(text, group(after, 1), group(after, 2), group(after, 3), per);
    }
    Matcher before = BEFORE.matcher(trimmed);
    if (before.matches()) {
      return amount(text, group(before, 2), group(before, 1), group(before, 3), per);
    }
    if (ONLY_NUMBER.matcher(trimmed).matches()) {
      String hint = "Maybe \"" + trimmed + " EUR" + per.symbol() + "\".";
      return refused(Reason.UNIT_MISSING, text, per, hint);
    }
    String hint =
        WrittenNumber.findWithPoint(trimmed)
            .map(point -> "Maybe \"" + point + "\": a number has no comma.")
            .orElse("");
    return refused(Reason.NOT_A_NUMBER, text, per, hint);
  }

  private static String group(Matcher matcher, int group) {
    String found = matcher.group(group);
    return found == null ? "" : found;
  }

  private static MoneyParsed amount(
      String text, String digits, String currency, String word, MoneyPer per) {
    Optional<Currency> known = findCurrency(currency);
    if (known.isEmpty()) {
      String hint = currency.equals("$") ? "Maybe USD: the sign $ stands for many currencies." : "";
      return refused(Reason.UNIT_UNKNOWN, text, per, hint);
    }
    Optional<BigDecimal> size = per.findSize(word.toLowerCase(Locale.ROOT));
    if (size.isEmpty()) {
      String hint = "Maybe \"" + digits + " " + currency + per.symbol() + "\".";
      return refused(
          word.isEmpty() ? Reason.UNIT_MISSING : Reason.UNIT_OF_ANOTHER_KIND, text, per, hint);
    }
    BigDecimal amount = new BigDecimal(digits);
    boolean asWritten = size.get().compareTo(BigDecimal.ONE) == 0;
    return new MoneyParsed.Value(
        new Money(
            asWritten ? amount : amount.divide(size.get(), MathContext.DECIMAL64), known.get()),
        per);
  }

  private static Optional<Currency> findCurrency(String written) {
    String code = SIGNS.getOrDefault(written, written).toUpperCase(Locale.ROOT);
    return Currency.getAvailableCurrencies().stream()
        .filter(currency -> currency.getCurrencyCode().equals(code))
        .findFirst();
  }

  private static Refused refused(Reason reason, String found, MoneyPer per, String hint) {
    String allowed =
        "a number and an ISO 4217 currency, such as 1.85 EUR"
            + per.symbol()
            + (per == MoneyPer.WHOLE
                ? ""
                : "; after the stroke: " + String.join(", ", per.words()));
    String shown = found.isBlank() ? "nothing" : "\"" + found + "\"";
    return new Refused(reason, shown, allowed, hint);
  }
}
