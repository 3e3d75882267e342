package drumline.intake.size;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Range;
import drumline.shop.quantity.Parsed;
import drumline.shop.quantity.QuantityKind;
import drumline.shop.quantity.QuantityReader;
import drumline.shop.quantity.UnitSystem;
import drumline.shop.tolerance.Tolerance;
import drumline.shop.tolerance.ToleranceParsed;
import drumline.shop.tolerance.ToleranceReader;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * Reads a size with its tolerance, in one text ({@code 12 mm h9}) or with the tolerance under a key
 * of its own; where neither stands, the part's general tolerance holds.
 *
 * @param generalTolerance general tolerance of the print, e.g. {@code ISO 2768-m}
 */
public record SizeField(String generalTolerance) {

  /** Width in mm given to a size too small for the general tolerance's table. */
  private static final double SMALLEST_GENERAL_MM = 0.1;

  /** Letters without a figure behind a number: a unit that is not known. */
  private static final Pattern UNIT_LIKE = Pattern.compile("[A-Za-zµμ]+(/[A-Za-z]+)?");

  private static final String SIZE_ALLOWED =
      "a size with its unit and, if wanted, its tolerance, such as 12 mm h9 or 0.5 in ±0.002 in";

  /**
   * A size with its tolerance.
   *
   * @param nominalMm the size; NaN where it could not be read
   * @param tolerance its tolerance
   */
  public record Size(double nominalMm, Tolerance tolerance) {}

  /** The size under a key that must be there. */
  public Size read(Block block, String key, String toleranceKey) {
    Optional<Field> field = block.require(key);
    return field.isEmpty() ? broken() : read(field.get(), block.find(toleranceKey));
  }

  /** The size in a field, its tolerance behind it or in a field of its own. */
  public Size read(Field field, Optional<Field> toleranceField) {
    Optional<SizeText> taken = SizeText.find(field.text());
    if (taken.isEmpty()) {
      field.quantity(QuantityKind.LENGTH, Range.POSITIVE);
      return broken();
    }
    String inline = taken.get().tolerance();
    if (UNIT_LIKE.matcher(inline).matches()) {
      field.quantity(QuantityKind.LENGTH, Range.POSITIVE);
      return broken();
    }
    double nominalMm = nominalMm(field, taken.get().size());
    if (Double.isNaN(nominalMm)) {
      return broken();
    }
    if (!inline.isEmpty() && toleranceField.isPresent()) {
      field.report(
          "tolerance-twice",
          field.node().words() + " and " + toleranceField.get().node().words(),
          "one tolerance",
          "");
    }
    Field from = inline.isEmpty() ? toleranceField.orElse(field) : field;
    String text = inline.isEmpty() ? toleranceField.map(Field::text).orElse("") : inline;
    return new Size(nominalMm, tolerance(from, text, nominalMm));
  }

  /** The general tolerance of a size. */
  public Tolerance general(Field field, double nominalMm) {
    return tolerance(field, "", nominalMm);
  }

  private double nominalMm(Field field, String text) {
    Parsed parsed = QuantityReader.read(text, QuantityKind.LENGTH, field.system());
    if (parsed instanceof Parsed.Value value && value.value() == 0) {
      field.report("out-of-range", field.node().words(), Range.POSITIVE.words("mm"), "");
      return Double.NaN;
    }
    return field.quantityOf(text, QuantityKind.LENGTH, Range.POSITIVE);
  }

  private Tolerance tolerance(Field field, String text, double nominalMm) {
    String wanted = text.isEmpty() ? generalTolerance : text;
    ToleranceParsed parsed = ToleranceReader.read(wanted, nominalMm, field.system());
    if (parsed instanceof ToleranceParsed.Value value) {
      return value.tolerance();
    }
    ToleranceParsed.Refused refused = (ToleranceParsed.Refused) parsed;
    if (text.isEmpty() && nominalMm < 0.5) {
      return new Tolerance(
          generalTolerance, -SMALLEST_GENERAL_MM, SMALLEST_GENERAL_MM, OptionalInt.empty());
    }
    boolean unitWrong = refused.code().equals("tolerance-unreadable") && !text.isEmpty();
    String allowed = unitWrong ? SIZE_ALLOWED + "; as tolerance " + refused.allowed() : "";
    field.report(
        refused.code(),
        refused.found(),
        allowed.isEmpty() ? refused.allowed() : allowed,
        refused.hint());
    return broken().tolerance();
  }

  /** Whether a text can be read as a general tolerance. */
  public static boolean isGeneral(String text) {
    return text.matches("ISO\\s*2768.*")
        && ToleranceReader.read(text, 10, UnitSystem.METRIC) instanceof ToleranceParsed.Value;
  }

  /** A size that could not be read. */
  public static Size broken() {
    return new Size(Double.NaN, new Tolerance("", -1, 1, OptionalInt.empty()));
  }
}
