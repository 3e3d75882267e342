package drumline.intake.library;

import drumline.intake.form.Field;
import drumline.intake.form.Range;
import drumline.shop.quantity.QuantityKind;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A span such as {@code 140 to 220 m/min}; one value alone is both bounds.
 *
 * @param low lower bound in the kind's internal unit; NaN where it cannot be read
 * @param high upper bound
 */
record SpanText(double low, double high) {

  private static final Pattern SPAN =
      Pattern.compile("\\s*([\\d.]+)\\s*(\\S*)\\s+to\\s+([\\d.]+)\\s*(.*)");
  private static final Pattern OF_DIAMETER = Pattern.compile("(.*)\\s*[x×]\\s*D\\s*");

  static SpanText read(Field field, QuantityKind kind) {
    return read(field, field.text(), kind);
  }

  /** A span of shares of the diameter, such as {@code 0.015 to 0.03 x D}. */
  static SpanText readOfDiameter(Field field) {
    Matcher matcher = OF_DIAMETER.matcher(field.text());
    if (!matcher.matches()) {
      field.report(
          "unit-missing",
          field.node().words(),
          "feed as a share of the diameter, such as \"0.015 to 0.03 x D\"",
          "");
      return new SpanText(Double.NaN, Double.NaN);
    }
    return read(field, matcher.group(1), QuantityKind.RATIO);
  }

  private static SpanText read(Field field, String text, QuantityKind kind) {
    Matcher matcher = SPAN.matcher(text);
    if (!matcher.matches()) {
      double one = field.quantityOf(text, kind, Range.POSITIVE);
      return new SpanText(one, one);
    }
    String unit = matcher.group(4).strip();
    String lowUnit = matcher.group(2).isEmpty() ? unit : matcher.group(2);
    double low = field.quantityOf(matcher.group(1) + " " + lowUnit, kind, Range.POSITIVE);
    double high = field.quantityOf(matcher.group(3) + " " + unit, kind, Range.POSITIVE);
    if (low > high) {
      field.report("span-backwards", field.node().words(), "the lesser value first", "");
    }
    return new SpanText(low, high);
  }
}
