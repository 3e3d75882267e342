package drumline.store.files;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where the rows of a table stand in the folder.
 *
 * @param table the table
 * @param path path of the file; a column in braces stands for its number. A file that ends in jsonl
 *     holds one row on each line, any other just one row
 * @param order the columns by which rows are sorted
 * @param columns the columns, in the order in which they are written
 */
record TableShape(String table, String path, List<String> order, List<Column> columns) {
  private static final Pattern HOLE = Pattern.compile("\\{(\\w+)}");

  boolean holdsManyRows() {
    return path.endsWith(".jsonl");
  }

  /** The file of a row. */
  String pathOf(Map<String, Object> row) {
    return HOLE.matcher(path)
        .replaceAll(hole -> String.format(Locale.ROOT, "%06d", (Long) row.get(hole.group(1))));
  }

  /** Whether a file of this path holds rows of this table. */
  boolean matches(String file) {
    Matcher hole = HOLE.matcher(path);
    StringBuilder pattern = new StringBuilder();
    int from = 0;
    while (hole.find()) {
      pattern.append(Pattern.quote(path.substring(from, hole.start()))).append("\\d{6,}");
      from = hole.end();
    }
    return file.matches(pattern + Pattern.quote(path.substring(from)));
  }

  /** The file beside a row's file that holds one of its columns. */
  static String beside(String file, Column column) {
    String ending = column.file();
    return ending.startsWith(".")
        ? file.substring(0, file.lastIndexOf('.')) + ending
        : file.substring(0, file.lastIndexOf('/') + 1) + ending;
  }
}
