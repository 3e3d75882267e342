package drumline.store.files;

import drumline.shop.problem.Problem;
import drumline.store.api.StoreFault;
import drumline.store.database.Database;
import drumline.store.database.SchemaMigration;
import drumline.store.sql.SortedJson;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.result.ResultIterator;

/** Writes everything into a folder, as it is at one moment, in an order that never changes. */
public final class FolderWriter {
  private static final int ROWS_AT_ONCE = 100;
  private final Path folder;

  private FolderWriter(Path folder) {
    this.folder = folder;
  }

  /**
   * Writes everything.
   *
   * @return how many rows of each table
   * @throws StoreFault if the folder is not empty or cannot be written
   */
  public static Map<String, Integer> write(Database database, Path folder) {
    try {
      makeEmptyFolder(folder);
      FolderWriter writer = new FolderWriter(folder);
      Map<String, Integer> rows = database.snapshot(writer::writeTables);
      FolderNote note = new FolderNote(FolderNote.FORMAT, SchemaMigration.PRESENT_VERSION, rows);
      Files.writeString(folder.resolve(FolderNote.FILE), note.toJson());
      return rows;
    } catch (IOException e) {
      throw new StoreFault(
          Problem.error(
              "export-not-written",
              folder.toString(),
              "a file there cannot be written: " + e.getMessage(),
              "a folder that this user may write to, with enough space",
              ""),
          e);
    }
  }

  private static void makeEmptyFolder(Path folder) throws IOException {
    Files.createDirectories(folder);
    try (DirectoryStream<Path> inside = Files.newDirectoryStream(folder)) {
      if (inside.iterator().hasNext()) {
        throw new StoreFault(
            Problem.error(
                "export-folder-not-empty",
                folder.toString(),
                "it holds files already",
                "a new or empty folder",
                "Maybe an older export is there; nothing was written."));
      }
    }
  }

  private Map<String, Integer> writeTables(Handle handle) throws IOException {
    Map<String, Integer> rows = new HashMap<>();
    for (TableShape shape : TableShapes.ALL) {
      rows.put(shape.table(), writeTable(handle, shape));
    }
    return rows;
  }

  private int writeTable(Handle handle, TableShape shape) throws IOException {
    int count = 0;
    String columns = String.join(", ", shape.columns().stream().map(Column::name).toList());
    String order = String.join(", ", shape.order());
    try (ResultIterator<Map<String, Object>> rows =
        handle
            .createQuery("SELECT " + columns + " FROM " + shape.table() + " ORDER BY " + order)
            .setFetchSize(ROWS_AT_ONCE)
            .map((row, context) -> read(shape, row))
            .iterator()) {
      while (rows.hasNext()) {
        writeRow(shape, rows.next());
        count++;
      }
    }
    return count;
  }

  private static Map<String, Object> read(TableShape shape, ResultSet row) throws SQLException {
    Map<String, Object> values = new HashMap<>();
    for (Column column : shape.columns()) {
      Object value =
          switch (column.form()) {
            case WHOLE, MOMENT -> row.getLong(column.name());
            case DECIMAL -> row.getDouble(column.name());
            case TEXT, JSON -> row.getString(column.name());
          };
      if (!row.wasNull()) {
        values.put(column.name(), value);
      }
    }
    return values;
  }

  private void writeRow(TableShape shape, Map<String, Object> row) throws IOException {
    String file = shape.pathOf(row);
    append(file, RowJson.write(shape, row));
    for (Column column : shape.columns()) {
      Object value = row.get(column.name());
      if (value != null && !column.file().isEmpty()) {
        String text = (String) value;
        append(
            TableShape.beside(file, column),
            column.form() == Column.Form.JSON ? SortedJson.object(text) + "\n" : text);
      }
    }
  }

  private void append(String file, String text) throws IOException {
    Path path = folder.resolve(file);
    Files.createDirectories(path.resolveSibling("."));
    Files.writeString(
        path, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
  }
}
