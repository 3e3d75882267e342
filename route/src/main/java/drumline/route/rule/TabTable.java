package drumline.route.rule;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads the tab-separated tables of rules and allowances; lines that begin with # are headings. */
final class TabTable {
  private TabTable() {}

  /**
   * The table's rows, each with its columns in order.
   *
   * @throws IllegalStateException if the program's own file is missing or a row is short
   */
  static List<String[]> rows(String name, int columns) {
    try (InputStream in = TabTable.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("missing file of the program: " + name);
      }
      BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      return reader
          .lines()
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .map(line -> split(name, line, columns))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String[] split(String name, String line, int columns) {
    String[] cells = line.split("\t", -1);
    if (cells.length != columns) {
      throw new IllegalStateException(name + ": " + columns + " columns expected in: " + line);
    }
    return cells;
  }
}
