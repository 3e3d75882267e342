package drumline.store.files;

import drumline.store.database.Database;
import java.util.Map;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;

/** How many rows each table holds. */
public final class RowCounts {
  private RowCounts() {}

  /** By the name of the table. */
  public static Map<String, Integer> of(Database database) {
    return database.snapshot(RowCounts::of);
  }

  static Map<String, Integer> of(Handle handle) {
    Map<String, Integer> counts = new TreeMap<>();
    for (TableShape shape : TableShapes.ALL) {
      String table = shape.table();
      counts.put(
          table, handle.createQuery("SELECT COUNT(*) FROM " + table).mapTo(Integer.class).one());
    }
    return counts;
  }
}
