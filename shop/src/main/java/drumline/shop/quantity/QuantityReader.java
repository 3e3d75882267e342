package drumline.shop.quantity;

import drumline.shop.quantity.Parsed.Reason;
import drumline.shop.quantity.Parsed.Refused;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads a quantity the way people write it, such as {@code 1 1/4 in}, {@code 180 m/min}, {@code Ra
 * 1.6 µm} or {@code 3 %}, and gives it in the internal unit of its kind.
 *
 * <p>A number without unit has the unit that its file's unit system gives to the kind; a time must
 * carry its unit, unless it is 0. A decimal comma is refused with a proposal, never guessed.
 *
 * <p>Source: factors from [NIST-SP811] 2008, appendix B.8, in the data file {@code units.csv}.
 */
public final class QuantityReader {

  private static final Pattern NOT_FINITE =
      Pattern.compile("[+\\-]?(nan|inf|infinity|∞)\\b.*|[+\\-]?∞.*", Pattern.CASE_INSENSITIVE);
  private static final Pattern THOUSANDS = Pattern.compile("[+\\-−]?\\d{1,3}(,\\d{3})+(?!\\d).*");
  private static final Pattern DIAMETER_SIGN = Pattern.compile("^[øØ⌀]\\s*");
  private static final Pattern RA_SIGN = Pattern.compile("^Ra\\s*", Pattern.CASE_INSENSITIVE);

  private QuantityReader() {}

  /**
   * Reads one quantity.
   *
   * @param text what a person wrote
   * @param kind what it must measure
   * @param system what a bare number means
   */
  public static Parsed read(String text, QuantityKind kind, UnitSystem system) {
    String bare = withoutSign(text.strip(), kind);
    if (NOT_FINITE.matcher(bare).matches()) {
      return refused(Reason.NOT_FINITE, text, "a finite number", "");
    }
    Optional<WrittenNumber> number = WrittenNumber.find(bare);
    if (number.isEmpty()) {
      return refused(Reason.NOT_A_NUMBER, text, numberAllowed(kind, system), commaHint(bare));
    }
    return withUnit(text, number.get(), kind, system);
  }

  private static String withoutSign(String text, QuantityKind kind) {
    return switch (kind) {
      case LENGTH -> DIAMETER_SIGN.matcher(text).replaceFirst("");
      case ROUGHNESS -> RA_SIGN.matcher(text).replaceFirst("");
      default -> text;
    };
  }

  private static Parsed withUnit(
      String text, WrittenNumber number, QuantityKind kind, UnitSystem system) {
    UnitTable table = UnitTable.get();
    Optional<Unit> unit =
        number.rest().isEmpty()
            ? bareUnit(number.amount(), kind, system)
            : table.find(kind, number.rest());
    if (unit.isPresent()) {
      double value = unit.get().toInternal(number.amount());
      return Double.isFinite(value)
          ? new Parsed.Value(value, kind, unit.get().symbol())
          : refused(Reason.NOT_FINITE, text, "a finite number", "");
    }
    if (number.rest().isEmpty()) {
      String first = table.symbols(kind).get(0);
      return refused(
          Reason.UNIT_MISSING,
          text,
          unitsAllowed(kind),
          "Maybe \"" + text.strip() + " " + first + "\".");
    }
    Optional<Unit> other = table.findOfAnyKind(number.rest());
    if (other.isPresent()) {
      String hint =
          "Maybe another field was meant: "
              + other.get().symbol()
              + " measures "
              + other.get().kind().words()
              + ".";
      return refused(Reason.UNIT_OF_ANOTHER_KIND, text, unitsAllowed(kind), hint);
    }
    return refused(Reason.UNIT_UNKNOWN, text, unitsAllowed(kind), nearestHint(number.rest(), kind));
  }

  private static Optional<Unit> bareUnit(double amount, QuantityKind kind, UnitSystem system) {
    Optional<Unit> unit = UnitTable.get().findBare(kind, system);
    return unit.isPresent() || amount != 0
        ? unit
        : Optional.of(UnitTable.get().shown(kind, system));
  }

  private static String numberAllowed(QuantityKind kind, UnitSystem system) {
    String unit = UnitTable.get().shown(kind, system).symbol();
    return "a number with a decimal point and its unit, such as 1.5 " + unit;
  }

  private static String commaHint(String text) {
    return WrittenNumber.findWithPoint(text)
        .map(point -> "Maybe \"" + point + "\"" + orThousands(text) + ": a number has no comma.")
        .orElse("");
  }

  private static String orThousands(String text) {
    return THOUSANDS.matcher(text).matches() ? " or \"" + text.replace(",", "") + "\"" : "";
  }

  private static String unitsAllowed(QuantityKind kind) {
    return kind.words() + " in " + String.join(", ", UnitTable.get().symbols(kind));
  }

  private static String nearestHint(String unit, QuantityKind kind) {
    List<String> nearest = NearestWord.among(UnitTable.plain(unit), UnitTable.get().words(kind), 1);
    return nearest.isEmpty() ? "" : "Maybe the unit " + nearest.get(0) + ".";
  }

  private static Refused refused(Reason reason, String found, String allowed, String hint) {
    String shown = found.isBlank() ? "nothing" : "\"" + found + "\"";
    return new Refused(reason, shown, allowed, hint);
  }
}
