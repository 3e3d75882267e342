package drumline.sheets.html;

/** Writes text as a quoted string of a style sheet that stands inside a page. */
final class CssString {
  private CssString() {}

  /** The string with its quotes; everything but plain letters, digits and marks by its code. */
  static String of(String text) {
    StringBuilder out = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            code -> {
              boolean plain =
                  (Character.isLetterOrDigit(code) && code < 128) || " .,:-".indexOf(code) >= 0;
              out.append(plain ? Character.toString(code) : "\\" + Integer.toHexString(code) + " ");
            });
    return out.append('"').toString();
  }
}
