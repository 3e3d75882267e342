package drumline.drawing.svg;

/** Makes text safe inside XML elements and attributes. */
final class XmlText {

  /** Stands for the sheet's own prefix of ids until the sheet is finished. */
  static final char PREFIX_MARK = '\uE000';

  private XmlText() {}

  /** The text with markup characters escaped and characters that XML does not allow left out. */
  static String escape(String text) {
    StringBuilder out = new StringBuilder(text.length() + 16);
    text.codePoints().filter(XmlText::isAllowed).forEach(c -> append(out, c));
    return out.toString();
  }

  private static void append(StringBuilder out, int c) {
    switch (c) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '"' -> out.append("&quot;");
      case '\'' -> out.append("&#39;");
      default -> out.appendCodePoint(c);
    }
  }

  private static boolean isAllowed(int c) {
    boolean isXml =
        c == '\t'
            || c == '\n'
            || c == '\r'
            || (c >= 0x20 && c <= 0xD7FF)
            || (c >= 0xE000 && c <= 0xFFFD)
            || c >= 0x10000;
    return isXml && c != PREFIX_MARK;
  }
}
