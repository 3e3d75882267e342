package drumline.sheets.content.plain;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Refuses SVG that would run something or fetch something. */
final class SvgText {
  private static final Pattern ACTIVE =
      Pattern.compile(
          "<script|<foreignObject|<[^>]*\\son[a-z]+\\s*=|(?:href|src)\\s*=\\s*[\"'](?!#)|url\\(\\s*[\"']?(?!#)"
              + "|@import|javascript:",
          Pattern.CASE_INSENSITIVE);

  private SvgText() {}

  static String checked(String svg) {
    String text = svg.strip();
    if (!text.startsWith("<svg") || !text.endsWith("</svg>")) {
      throw new IllegalArgumentException(
          "svg: begins with \""
              + text.substring(0, Math.min(20, text.length()))
              + "\", allowed: one element from <svg to </svg>");
    }
    Matcher active = ACTIVE.matcher(text);
    if (active.find()) {
      throw new IllegalArgumentException(
          "svg: holds \"" + active.group() + "\", allowed: no scripts and no outside addresses");
    }
    return text;
  }
}
