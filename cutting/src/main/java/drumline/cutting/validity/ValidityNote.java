package drumline.cutting.validity;

import java.util.Locale;

/**
 * One quantity that lies outside the range in which a formula was measured: the result is still
 * given, and this note says why it must be believed less.
 *
 * <p>Source: none, the range and its source stand at the formula that wrote the note.
 *
 * @param quantity shop name of the quantity, e.g. {@code chip thickness}
 * @param found its value, in unit
 * @param from lower end of the range, in unit
 * @param to upper end of the range, in unit
 * @param unit unit as printed, e.g. {@code mm}
 * @param consequence what that does to the result, one sentence
 */
public record ValidityNote(
    String quantity, double found, double from, double to, String unit, String consequence) {

  /** The note as one line for a sheet. */
  public String toLine() {
    String said = String.format(Locale.ROOT, "%s %s", quantity, with(unit, found));
    String range =
        Double.isInfinite(to)
            ? "below " + with(unit, from)
            : String.format(Locale.ROOT, "outside %.4g to %s", from, with(unit, to));
    return said + " is " + range + ": " + consequence;
  }

  private static String with(String unit, double value) {
    return String.format(Locale.ROOT, "%.4g %s", value, unit).strip();
  }
}
