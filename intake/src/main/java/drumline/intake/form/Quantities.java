package drumline.intake.form;

import drumline.shop.quantity.Parsed;
import drumline.shop.quantity.QuantityKind;
import drumline.shop.quantity.QuantityReader;
import drumline.shop.quantity.QuantityWriter;
import drumline.shop.quantity.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Pattern;

/** Reads quantities for fields: unit, declared unit system, range. */
final class Quantities {

  /** Digits kept of a converted value, so that 7/8 in is 22.225 mm. */
  private static final MathContext DIGITS = new MathContext(13);

  private static final Pattern PLAIN =
      Pattern.compile("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d{1,3})?");

  private Quantities() {}

  /** The quantity in its kind's internal unit; NaN, and reported, where it is not right. */
  static double read(Field field, String text, QuantityKind kind, Range range) {
    Parsed parsed = QuantityReader.read(text, kind, field.system());
    if (parsed instanceof Parsed.Refused refused) {
      field.report(
          refused.reason().code(), refused.found(), refused.allowed(), hint(refused, kind, text));
      return Double.NaN;
    }
    double value = ((Parsed.Value) parsed).value();
    if (!field.systemDeclared() && dependsOnSystem(text, kind)) {
      String unit = QuantityWriter.unit(kind, UnitSystem.METRIC);
      field.report(
          "unit-missing",
          "\"" + text + "\" in a file that declares no units",
          kind.words() + " with its unit",
          "Maybe \"" + text + " " + unit + "\", or \"units: metric\" at the top of the file.");
      return Double.NaN;
    }
    return held(field, value, range, words(range, kind));
  }

  static double number(Field field, String text, Range range) {
    String plain = text.replaceAll("(?<=\\d)[ _\\u00a0\\u202f](?=\\d{3}(\\D|$))", "");
    if (!PLAIN.matcher(plain).matches() || !Double.isFinite(Double.parseDouble(plain))) {
      field.report("not-a-number", "\"" + text + "\"", "a number, " + range.words(""), hint(text));
      return Double.NaN;
    }
    return held(field, Double.parseDouble(plain), range, range.words(""));
  }

  private static String words(Range range, QuantityKind kind) {
    boolean share = kind == QuantityKind.RATIO && range.high() < Double.MAX_VALUE;
    return share
        ? new Range(100 * range.low(), range.lowOpen(), 100 * range.high()).words("%")
        : range.words(kind.internalUnit());
  }

  /** A bare time may be of any unit, so all the usual ones are offered. */
  private static String hint(Parsed.Refused refused, QuantityKind kind, String text) {
    boolean bareTime = kind == QuantityKind.TIME && refused.reason() == Parsed.Reason.UNIT_MISSING;
    return bareTime
        ? "Maybe \"" + text + " s\", \"" + text + " min\" or \"" + text + " h\"."
        : refused.hint();
  }

  private static String hint(String text) {
    return text.matches("[0-9]+(,[0-9]{3})+|[0-9]+,[0-9]+")
        ? "Maybe \"" + text.replace(",", "") + "\" or \"" + text.replace(',', '.') + "\"."
        : "";
  }

  /** The value, free of the binary noise of unit factors, where the range holds it. */
  private static double held(Field field, double value, Range range, String allowed) {
    if (range.holds(value)) {
      return BigDecimal.valueOf(value).round(DIGITS).doubleValue();
    }
    field.report("out-of-range", field.node().words(), allowed, "");
    return Double.NaN;
  }

  private static boolean dependsOnSystem(String text, QuantityKind kind) {
    Parsed metric = QuantityReader.read(text, kind, UnitSystem.METRIC);
    Parsed inch = QuantityReader.read(text, kind, UnitSystem.INCH);
    return metric instanceof Parsed.Value m
        && inch instanceof Parsed.Value i
        && m.value() != i.value();
  }
}
