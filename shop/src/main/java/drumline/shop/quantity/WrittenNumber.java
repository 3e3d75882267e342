package drumline.shop.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people write it, taken off the front of a text: {@code 12}, {@code .5}, {@code 1/4},
 * {@code 1 1/4}, {@code 1-1/4}, {@code 10 000}, {@code 1.5e3}.
 *
 * @param amount the number; infinite if a fraction divides by zero or the number is too large
 * @param rest what follows it, trimmed
 */
record WrittenNumber(double amount, String rest) {

  private static final String SIGN = "([+\\-−]?)";
  private static final Pattern MIXED = Pattern.compile(SIGN + "(\\d+)[ \\-](\\d+)/(\\d+)(.*)");
  private static final Pattern FRACTION = Pattern.compile(SIGN + "(\\d+)/(\\d+)(.*)");
  private static final Pattern DECIMAL =
      Pattern.compile(
          SIGN
              + "((?:\\d{1,3}(?:[ \\u00a0\\u202f]\\d{3})+(?!\\d)|\\d+)(?:\\.\\d*)?|\\.\\d+)"
              + "((?:[eE][+\\-]?\\d+)?)(.*)");
  private static final Pattern STILL_A_NUMBER = Pattern.compile("[.,].*|\\d(?!/).*");
  private static final Pattern COMMA = Pattern.compile(SIGN + "([\\d.]*\\d),(\\d+)(.*)");

  /** Takes the number off the front, if there is one. */
  static Optional<WrittenNumber> find(String text) {
    String trimmed = text.strip();
    Matcher mixed = MIXED.matcher(trimmed);
    if (mixed.matches()) {
      double whole = amount(mixed, 2);
      double part = amount(mixed, 3) / amount(mixed, 4);
      return of(mixed, whole + part, 5);
    }
    Matcher fraction = FRACTION.matcher(trimmed);
    if (fraction.matches()) {
      return of(fraction, amount(fraction, 2) / amount(fraction, 3), 4);
    }
    Matcher decimal = DECIMAL.matcher(trimmed);
    if (!decimal.matches() || STILL_A_NUMBER.matcher(decimal.group(4).strip()).matches()) {
      return Optional.empty();
    }
    String digits = decimal.group(2).replaceAll("[ \\u00a0\\u202f]", "") + decimal.group(3);
    return of(decimal, Double.parseDouble(digits), 4);
  }

  /** The same text with a decimal point, if it was written with a decimal comma. */
  static Optional<String> findWithPoint(String text) {
    Matcher comma = COMMA.matcher(text.strip());
    if (!comma.matches()) {
      return Optional.empty();
    }
    String whole = comma.group(2).replace(".", "");
    return Optional.of(comma.group(1) + whole + "." + comma.group(3) + comma.group(4));
  }

  private static double amount(Matcher matcher, int group) {
    return Double.parseDouble(matcher.group(group));
  }

  private static Optional<WrittenNumber> of(Matcher matcher, double size, int restGroup) {
    String sign = matcher.group(1);
    double amount = sign.isEmpty() || sign.equals("+") ? size : -size;
    return Optional.of(new WrittenNumber(amount, matcher.group(restGroup).strip()));
  }
}
