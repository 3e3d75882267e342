package drumline.shop.tolerance;

import drumline.shop.quantity.Parsed;
import drumline.shop.quantity.QuantityKind;
import drumline.shop.quantity.QuantityReader;
import drumline.shop.quantity.UnitSystem;
import drumline.shop.tolerance.ToleranceParsed.Refused;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads tolerances written as numbers: even deviation, two deviations, or two limits. */
final class WrittenDeviations {

  private static final String NUMBER = "(?:\\d+(?:\\.\\d*)?|\\.\\d+)";
  private static final String UNIT = "\\s*([^\\d\\s.,+\\-−–…/]*)\\s*";
  private static final Pattern EVEN =
      Pattern.compile("(?:±|\\+\\s*/\\s*[-−]|\\+[-−])\\s*(" + NUMBER + ")" + UNIT);
  private static final String SIGNED = "([+\\-−]\\s*" + NUMBER + "|0(?:\\.0*)?)";
  private static final Pattern TWO =
      Pattern.compile(SIGNED + UNIT + "(?:/|;|\\s|(?=[+\\-−]))\\s*" + SIGNED + UNIT);
  private static final Pattern LIMITS =
      Pattern.compile(
          "(" + NUMBER + ")" + UNIT + "(?:–|-|\\.{2,3}|…|to|/)\\s*(" + NUMBER + ")" + UNIT);

  /** Limits whose middle lies further than this share of the nominal size from it are a slip. */
  private static final double FAR_RATIO = 0.1;

  private WrittenDeviations() {}

  /** The tolerance, or what is wrong with it; empty if the text is written another way. */
  static Optional<ToleranceParsed> find(String text, double nominalMm, UnitSystem system) {
    Matcher even = EVEN.matcher(text);
    if (even.matches()) {
      return Optional.of(even(text, even, system));
    }
    Matcher two = TWO.matcher(text);
    if (two.matches()) {
      return Optional.of(pair(text, two, 0, system));
    }
    Matcher limits = LIMITS.matcher(text.replaceFirst("(\\d)\\.\\.", "$1 .."));
    if (limits.matches()) {
      return Optional.of(pair(text, limits, nominalMm, system));
    }
    return Optional.empty();
  }

  private static ToleranceParsed even(String text, Matcher matcher, UnitSystem system) {
    Parsed size = length(matcher.group(1), matcher.group(2), system);
    if (size instanceof Parsed.Value value) {
      return tolerance(text, -value.value(), value.value());
    }
    return refusedUnit((Parsed.Refused) size);
  }

  private static ToleranceParsed pair(
      String text, Matcher matcher, double nominalMm, UnitSystem system) {
    String lastUnit = matcher.group(4);
    String firstUnit = matcher.group(2).isEmpty() ? lastUnit : matcher.group(2);
    Parsed first = length(matcher.group(1), firstUnit, system);
    Parsed second = length(matcher.group(3), lastUnit.isEmpty() ? firstUnit : lastUnit, system);
    if (first instanceof Parsed.Refused refused) {
      return refusedUnit(refused);
    }
    if (second instanceof Parsed.Refused refused) {
      return refusedUnit(refused);
    }
    double oneMm = ((Parsed.Value) first).value() - nominalMm;
    double otherMm = ((Parsed.Value) second).value() - nominalMm;
    if (nominalMm > 0 && Math.abs(oneMm + otherMm) / 2 > FAR_RATIO * nominalMm) {
      return ToleranceReader.refused(
          "tolerance-limits-far-off",
          text,
          "limits about the nominal size " + nominalMm + " mm",
          "Maybe the limits or the nominal size are mistyped.");
    }
    return tolerance(text, Math.min(oneMm, otherMm), Math.max(oneMm, otherMm));
  }

  private static Parsed length(String number, String unit, UnitSystem system) {
    String plain = number.replace(" ", "").replace("−", "-");
    return QuantityReader.read(plain + " " + unit, QuantityKind.LENGTH, system);
  }

  private static ToleranceParsed tolerance(String text, double lowerMm, double upperMm) {
    double lower = rounded(lowerMm);
    double upper = rounded(upperMm);
    return lower < upper
        ? new ToleranceParsed.Value(new Tolerance(text, lower, upper, OptionalInt.empty()))
        : ToleranceReader.refused("tolerance-without-width", text, "two different limits", "");
  }

  /** Takes off what binary arithmetic adds: a tenth of a nanometre is far below any tolerance. */
  private static double rounded(double mm) {
    return Math.round(mm * 1e7) / 1e7;
  }

  private static Refused refusedUnit(Parsed.Refused refused) {
    return new Refused(refused.reason().code(), refused.found(), refused.allowed(), refused.hint());
  }
}
