package drumline.app.listing;

import java.util.ArrayList;
import java.util.List;

/** Columns of text, each as wide as its widest cell; figures stand to the right. */
final class TextTable {
  private final List<String> heads;
  private final List<Boolean> right;
  private final List<List<String>> rows = new ArrayList<>();

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
    rows.add(List.of(cells));
    return this;
  }

  String text() {
    StringBuilder text = new StringBuilder();
    line(text, heads);
    rows.forEach(row -> line(text, row));
    return text.toString();
  }

  private void line(StringBuilder text, List<String> cells) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < cells.size(); i++) {
      String cell = cells.get(i);
      String space = " ".repeat(width(i) - cell.length());
      line.append(i == 0 ? "" : "  ").append(right.get(i) ? space + cell : cell + space);
    }
    text.append(line.toString().stripTrailing()).append('\n');
  }

  private int width(int column) {
    int widest = heads.get(column).length();
    for (List<String> row : rows) {
      widest = Math.max(widest, row.get(column).length());
    }
    return widest;
  }
}
