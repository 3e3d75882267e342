package drumline.store.files;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.store.api.StoreSettings.InFolder;
import drumline.store.database.Database;
import drumline.store.database.SqliteFile;
import java.nio.file.Path;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A column that is added to a table and forgotten in the files would be lost by an export. */
class EveryColumnTest {
  private static final Set<String> FOLLOWS_FROM_THE_REST = Set.of("inquiry.found_by");

  @Test
  void theFilesHoldEveryColumnOfEveryTable(@TempDir Path folder) {
    Set<String> inFiles = new TreeSet<>(FOLLOWS_FROM_THE_REST);
    for (TableShape shape : TableShapes.ALL) {
      shape.columns().forEach(column -> inFiles.add(shape.table() + "." + column.name()));
    }
    try (Database database = SqliteFile.open(new InFolder(folder).file())) {
      Set<String> inTables =
          database.<Set<String>, SQLException>read(
              handle -> columns(handle.getConnection().getMetaData()));
      assertThat(inFiles).isEqualTo(inTables);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Set<String> columns(DatabaseMetaData tables) throws SQLException {
    Set<String> columns = new TreeSet<>();
    try (ResultSet found = tables.getColumns(null, null, "%", "%")) {
      while (found.next()) {
        String table = found.getString("TABLE_NAME");
        if (!table.startsWith("flyway") && !table.startsWith("sqlite")) {
          columns.add(table + "." + found.getString("COLUMN_NAME"));
        }
      }
    }
    return columns;
  }
}
