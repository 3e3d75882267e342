package drumline.store.files;

import com.fasterxml.jackson.core.JsonProcessingException;
import drumline.shop.problem.Problem;
import drumline.store.api.StoreFault;
import drumline.store.database.BrokenConstraint;
import drumline.store.database.Database;
import drumline.store.database.Dialect;
import drumline.store.database.SchemaMigration;
import drumline.store.sql.ImportedRows;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;

/** Reads an exported folder into an empty store: all of it or nothing. */
public final class FolderReader {
  private final ImportFolder folder;
  private final Dialect dialect;
  private String at = "";

  private FolderReader(ImportFolder folder, Dialect dialect) {
    this.folder = folder;
    this.dialect = dialect;
  }

  /**
   * Reads everything.
   *
   * @return how many rows of each table
   * @throws StoreFault with every problem found, if the store is not empty or the folder is not a
   *     whole export; nothing is changed then
   */
  public static Map<String, Integer> read(Database database, Path path) {
    FolderReader reader = null;
    try {
      reader = new FolderReader(new ImportFolder(path), database.dialect());
      return database.write(reader::readTables);
    } catch (BrokenConstraint e) {
      throw new StoreFault(
          Problem.error(
              "import-row-refused",
              path.resolve(reader == null ? "" : reader.at).toString(),
              "it is there twice, or refers to something that is not there",
              "each row once, and what it refers to",
              ""),
          e);
    } catch (IOException e) {
      throw new StoreFault(
          Problem.error(
              "import-unreadable",
              path.toString(),
              "it cannot be read: " + e.getMessage(),
              "a folder that an export wrote",
              ""),
          e);
    }
  }

  private Map<String, Integer> readTables(Handle handle) throws IOException {
    ImportChecks.storeIsEmpty(handle);
    Map<String, Integer> promised = note();
    Map<String, Integer> rows = new HashMap<>();
    for (TableShape shape : TableShapes.ALL) {
      rows.put(shape.table(), readTable(handle, shape));
    }
    folder.noteUnread();
    stopAtProblems();
    ImportChecks.countsAgree(folder, promised, rows);
    ImportChecks.historiesAreWhole(folder, handle);
    stopAtProblems();
    ImportedRows.complete(handle, dialect);
    return rows;
  }

  private void stopAtProblems() {
    if (!folder.problems().isEmpty()) {
      throw new StoreFault(folder.problems());
    }
  }

  private Map<String, Integer> note() throws IOException {
    Optional<String> json = folder.text(FolderNote.FILE);
    stopAtProblems();
    try {
      FolderNote note = FolderNote.parse(json.orElse(""));
      if (!note.format().equals(FolderNote.FORMAT)) {
        folder.wrong(
            "import-not-ours", FolderNote.FILE, "format " + note.format(), FolderNote.FORMAT);
      } else if (note.version() > SchemaMigration.PRESENT_VERSION) {
        folder.wrong(
            "import-from-newer-version",
            FolderNote.FILE,
            "version " + note.version() + ", written by a newer Drumline",
            "version " + SchemaMigration.PRESENT_VERSION + " or older");
      }
      stopAtProblems();
      return note.rows();
    } catch (JsonProcessingException e) {
      folder.wrong("import-not-ours", FolderNote.FILE, "it is no note of an export", "that note");
      throw new StoreFault(folder.problems());
    }
  }

  private int readTable(Handle handle, TableShape shape) throws IOException {
    RowReader reader = new RowReader(folder, shape);
    int count = 0;
    for (String file : folder.filesOf(shape)) {
      at = file;
      List<Map<String, @Nullable Object>> rows = reader.rows(file);
      if (folder.problems().isEmpty() && !rows.isEmpty()) {
        insert(handle, shape, rows);
      }
      count += rows.size();
    }
    return count;
  }

  private static void insert(
      Handle handle, TableShape shape, List<Map<String, @Nullable Object>> rows) {
    List<String> names = shape.columns().stream().map(Column::name).toList();
    PreparedBatch batch =
        handle.prepareBatch(
            "INSERT INTO "
                + shape.table()
                + " ("
                + String.join(", ", names)
                + ") VALUES (:"
                + String.join(", :", names)
                + ")");
    for (Map<String, @Nullable Object> row : rows) {
      batch.bindMap(row).add();
    }
    batch.execute();
  }
}
