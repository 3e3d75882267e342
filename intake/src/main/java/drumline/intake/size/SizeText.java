package drumline.intake.size;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A size as people write it, taken apart: the number with its unit, and the tolerance behind it.
 *
 * @param size number with its unit, or bare
 * @param tolerance what follows, e.g. {@code h9}, {@code ±0.05}, {@code +0.1/0}; empty where
 *     nothing does
 */
record SizeText(String size, String tolerance) {

  private static final String NUMBER =
      "\\d+[ -]\\d+/\\d+|\\d+/\\d+|(?:\\d{1,3}(?:[ \\u00a0\\u202f]\\d{3})+|\\d+)(?:\\.\\d*)?|\\.\\d+";
  private static final String UNIT =
      "(?:(?:mm|µm|μm|um|microns?|cm|m|in|inch|inches|ft|mil|thou)(?![A-Za-z0-9])|[\"″'′])";
  private static final Pattern SIZE =
      Pattern.compile(
          "\\s*([øØ⌀]?\\s*(?:" + NUMBER + ")\\s*" + UNIT + "?)\\s*(.*)", Pattern.DOTALL);

  /** Takes a text apart, if it begins with a number. */
  static Optional<SizeText> find(String text) {
    Matcher matcher = SIZE.matcher(text);
    if (!matcher.matches() || matcher.group(2).matches("[.,\\d/].*")) {
      return Optional.empty();
    }
    return Optional.of(new SizeText(matcher.group(1).strip(), matcher.group(2).strip()));
  }
}
