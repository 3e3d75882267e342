package drumline.sheets.text;

import java.util.ArrayList;
import java.util.List;

/** Lines of a terminal of a given width. */
final class Lines {
  private static final String CUT = "…";
  private final int widthCount;
  private final List<String> lines = new ArrayList<>();

  Lines(int widthCount) {
    this.widthCount = widthCount;
  }

  Lines blank() {
    lines.add("");
    return this;
  }

  /** One line; what does not fit is cut with a mark. */
  Lines line(String text) {
    lines.add(cut(text, widthCount));
    return this;
  }

  /** One line with something at its right end. */
  Lines line(String left, String right) {
    String start = cut(left, Math.max(1, widthCount - right.length() - 2));
    return line(
        start + " ".repeat(Math.max(2, widthCount - start.length() - right.length())) + right);
  }

  /** As many lines as it takes, broken between words, the later ones indented. */
  Lines wrapped(String text, int indentCount) {
    return wrapped("", text, indentCount);
  }

  /** The same after a head that keeps its spaces. */
  Lines wrapped(String head, String text, int indentCount) {
    String indent = " ".repeat(indentCount);
    StringBuilder line = new StringBuilder(head);
    boolean empty = true;
    for (String word : text.split(" +", -1)) {
      if (!empty && line.length() + 1 + word.length() > widthCount) {
        line(line.toString());
        line = new StringBuilder(indent);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    return line(line.toString());
  }

  static String cut(String text, int widthCount) {
    return text.length() <= widthCount
        ? text
        : text.substring(0, widthCount - 1).stripTrailing() + CUT;
  }

  static String padded(String text, int widthCount) {
    String fitted = cut(text, widthCount);
    return fitted + " ".repeat(widthCount - fitted.length());
  }

  String text() {
    return String.join("\n", lines.stream().map(String::stripTrailing).toList()) + "\n";
  }
}
