package drumline.guard.paper;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The tables of a page: lines of cells between bars, without heads and rules.
 *
 * @param page name of the page
 * @param rows all rows, in their order
 */
record PageTable(String page, List<Row> rows) {

  /**
   * One row.
   *
   * @param line line on the page, from 1
   * @param section heading that it stands under; empty before the first
   * @param cells what stands between the bars, trimmed
   */
  record Row(int line, String section, List<String> cells) {}

  /** Reads a page. */
  static PageTable of(String page, String text) {
    List<Row> rows = new ArrayList<>();
    List<String> lines = text.lines().toList();
    String section = "";
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (line.startsWith("#")) {
        section = line.replaceFirst("^#+ *", "");
      } else if (line.startsWith("|") && !isRule(line) && !isHead(lines, i)) {
        rows.add(new Row(i + 1, section, cells(line)));
      }
    }
    return new PageTable(page, List.copyOf(rows));
  }

  private static boolean isHead(List<String> lines, int i) {
    return i + 1 < lines.size() && isRule(lines.get(i + 1));
  }

  private static boolean isRule(String line) {
    return line.matches("\\|[-| :]+\\|");
  }

  private static List<String> cells(String line) {
    String inner = line.strip().replaceAll("^\\||\\|$", "");
    return Arrays.stream(inner.split("\\|", -1)).map(String::strip).toList();
  }

  /** Rows that do not have so many cells, all filled. */
  List<String> gaps(int cellCount) {
    return rows.stream()
        .filter(row -> row.cells().size() != cellCount || row.cells().contains(""))
        .map(row -> breach(row, "wants " + cellCount + " filled cells"))
        .toList();
  }

  /** The place of a row and what is wrong there, as "page:line: what". */
  String breach(Row row, String what) {
    return page + ":" + row.line() + ": " + what;
  }
}
