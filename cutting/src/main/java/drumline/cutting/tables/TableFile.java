package drumline.cutting.tables;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Rows of a table that comes with the program: comma-separated, '#' begins a comment line, the
 * first line names the columns.
 *
 * <p>Source: each table's own last columns.
 */
final class TableFile {
  private TableFile() {}

  /** The rows under the heading, cells trimmed, each with the given number of cells. */
  static List<String[]> rows(String name, int columnsCount) {
    try (InputStream in = TableFile.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("The table " + name + " is missing.");
      }
      return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
          .lines()
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .skip(1)
          .map(line -> cells(name, line, columnsCount))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String[] cells(String name, String line, int columnsCount) {
    String[] cells = line.split(",", columnsCount);
    if (cells.length != columnsCount) {
      throw new IllegalStateException(
          name + " has " + cells.length + " cells, not " + columnsCount + ", in: " + line);
    }
    for (int i = 0; i < cells.length; i++) {
      cells[i] = cells[i].trim();
    }
    return cells;
  }
}
