package drumline.app.listing;

import java.util.ArrayList;
import java.util.List;

/**
 * Columns of text, each as wide as its widest cell; figures stand to the right; a row may have a
 * note under it, wrapped.
 */
final class TextTable {
  private static final int NOTE_WIDTH = 96;
  private static final String NOTE_INDENT = "    ";

  private record Line(List<String> cells, String note) {}

  private final List<String> heads;
  private final List<Boolean> right;
  private final List<Line> lines = new ArrayList<>();

  /**
   * A table with headings.
   *
   * @param heads headings; one that begins with {@code >} heads a column of figures
   */
  TextTable(String... heads) {
    this.heads = List.of(heads).stream().map(h -> h.startsWith(">") ? h.substring(1) : h).toList();
    this.right = List.of(heads).stream().map(h -> h.startsWith(">")).toList();
  }

  TextTable row(String... cells) {
    lines.add(new Line(List.of(cells), ""));
    return this;
  }

  /** A note under the row before. */
  TextTable note(String text) {
    lines.add(new Line(List.of(), text));
    return this;
  }

  String text() {
    StringBuilder text = new StringBuilder();
    cells(text, heads);
    for (Line line : lines) {
      if (line.cells().isEmpty()) {
        wrapped(text, line.note());
      } else {
        cells(text, line.cells());
      }
    }
    return text.toString();
  }

  private void cells(StringBuilder text, List<String> cells) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < cells.size(); i++) {
      String cell = cells.get(i);
      String space = " ".repeat(width(i) - cell.length());
      line.append(i == 0 ? "" : "  ").append(right.get(i) ? space + cell : cell + space);
    }
    text.append(line.toString().stripTrailing()).append('\n');
  }

  private static void wrapped(StringBuilder text, String note) {
    StringBuilder line = new StringBuilder(NOTE_INDENT);
    for (String word : note.split(" ", -1)) {
      if (line.length() + word.length() > NOTE_WIDTH && line.length() > NOTE_INDENT.length()) {
        text.append(line.toString().stripTrailing()).append('\n');
        line = new StringBuilder(NOTE_INDENT);
      }
      line.append(word).append(' ');
    }
    text.append(line.toString().stripTrailing()).append('\n');
  }

  private int width(int column) {
    int widest = heads.get(column).length();
    for (Line line : lines) {
      if (!line.cells().isEmpty()) {
        widest = Math.max(widest, line.cells().get(column).length());
      }
    }
    return widest;
  }
}
