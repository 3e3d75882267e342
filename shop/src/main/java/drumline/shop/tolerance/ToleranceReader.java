package drumline.shop.tolerance;

import drumline.shop.quantity.UnitSystem;
import drumline.shop.tolerance.ToleranceParsed.Refused;
import drumline.shop.tolerance.ToleranceParsed.Value;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a size tolerance the way prints give it: an ISO 286 code ({@code H7}), an even deviation
 * ({@code ±0.05}), two deviations ({@code +0.02/-0.01}, {@code +0.1 0}), two limits ({@code
 * 12.00–12.05}) or a general tolerance ({@code ISO 2768-m}).
 *
 * <p>Deviations and limits may carry a length unit at their end; without one they are in the file's
 * unit system.
 */
public final class ToleranceReader {

  private static final Pattern GENERAL =
      Pattern.compile("ISO\\s*2768(?:-1)?\\s*[-–]?\\s*([A-Za-z])([HKL])?");
  private static final Pattern FIT =
      Pattern.compile("([A-Z]{1,2}\\d{1,2})\\s*/\\s*([a-z]{1,2}\\d{1,2})");
  private static final String ALLOWED =
      "an ISO 286 code such as H7, ±0.05, +0.02/-0.01, limits such as 12.00..12.05, or ISO 2768-m";

  private ToleranceReader() {}

  /**
   * Reads the tolerance of a size.
   *
   * @param text what stands on the print
   * @param nominalMm the nominal size it belongs to, above 0, mm
   * @param system what a bare number means
   * @throws IllegalArgumentException if nominalMm is not above 0 or is infinite
   */
  public static ToleranceParsed read(String text, double nominalMm, UnitSystem system) {
    if (!(nominalMm > 0) || Double.isInfinite(nominalMm)) {
      throw new IllegalArgumentException("nominalMm is " + nominalMm + "; allowed: above 0");
    }
    String trimmed = text.strip();
    Optional<ToleranceClass> code = ToleranceClass.find(trimmed);
    if (code.isPresent()) {
      return ofClass(trimmed, code.get(), nominalMm);
    }
    Matcher general = GENERAL.matcher(trimmed);
    if (general.matches()) {
      return general(trimmed, general.group(1), nominalMm);
    }
    Matcher fit = FIT.matcher(trimmed);
    if (fit.matches()) {
      String hint =
          "Maybe " + fit.group(1) + " for the hole or " + fit.group(2) + " for the shaft.";
      return refused("tolerance-is-a-fit", trimmed, "the tolerance of one size", hint);
    }
    return WrittenDeviations.find(trimmed, nominalMm, system)
        .orElseGet(() -> refused("tolerance-unreadable", trimmed, ALLOWED, hint(trimmed)));
  }

  private static ToleranceParsed ofClass(String text, ToleranceClass code, double nominalMm) {
    if (!code.lettersKnown()) {
      return refused("tolerance-letters-unknown", text, lettersAllowed(), lettersHint(code));
    }
    if (code.grade() < StandardTolerance.FINEST || code.grade() > StandardTolerance.COARSEST) {
      return refused("tolerance-grade-unknown", text, "grades 1 to 18", "");
    }
    Optional<Tolerance> tolerance = code.findAt(nominalMm);
    return tolerance.isPresent()
        ? new Value(tolerance.get())
        : refused(
            "tolerance-not-defined",
            text + " at " + mm(nominalMm),
            "a class that ISO 286-1 defines at this size, to 500 mm",
            "Maybe two deviations, such as +0.02/-0.01.");
  }

  private static ToleranceParsed general(String text, String letter, double nominalMm) {
    Optional<Tolerance> tolerance = GeneralTolerance.find(text, letter.charAt(0), nominalMm);
    if (tolerance.isPresent()) {
      return new Value(tolerance.get());
    }
    boolean known = "fmcv".contains(letter);
    String small = letter.toLowerCase(Locale.ROOT);
    String hint = !known && "fmcv".contains(small) ? "Maybe ISO 2768-" + small + "." : "";
    return refused(
        "tolerance-not-defined",
        text + " at " + mm(nominalMm),
        "ISO 2768-f, -m, -c or -v, from 0.5 mm (v: over 3 mm) to 4000 mm (f: 2000 mm)",
        hint);
  }

  private static String lettersAllowed() {
    return "capitals for a hole or small letters for a shaft, of "
        + String.join(" ", ToleranceClass.shaftLetters());
  }

  private static String lettersHint(ToleranceClass code) {
    String small = code.letters().toLowerCase(Locale.ROOT);
    if (!ToleranceClass.shaftLetters().contains(small)) {
      return "";
    }
    String capital = code.letters().toUpperCase(Locale.ROOT);
    return "Maybe "
        + capital
        + code.grade()
        + " for a hole or "
        + small
        + code.grade()
        + " for a shaft.";
  }

  private static String hint(String text) {
    if (text.matches("[\\d.+\\-]+,\\d+.*")) {
      return "Maybe \"" + text.replace(',', '.') + "\": a number has no comma.";
    }
    if (text.matches("(\\d+(\\.\\d*)?|\\.\\d+)\\D*")) {
      return "Maybe \"±" + text + "\".";
    }
    if (text.matches("\\+\\S+( [a-zA-Z\"]+)?")) {
      return "Maybe \"" + text + " 0\" or \"±" + text.substring(1) + "\".";
    }
    return text.matches("[-−]\\S+( [a-zA-Z\"]+)?") ? "Maybe \"0 " + text + "\"." : "";
  }

  private static String mm(double nominalMm) {
    return nominalMm + " mm";
  }

  static Refused refused(String code, String found, String allowed, String hint) {
    return new Refused(code, found.isEmpty() ? "nothing" : "\"" + found + "\"", allowed, hint);
  }
}
