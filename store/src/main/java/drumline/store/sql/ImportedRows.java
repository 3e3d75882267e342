package drumline.store.sql;

import drumline.store.database.Dialect;
import drumline.store.entry.Revision;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** What no exported file holds, since it follows from the rest. */
public final class ImportedRows {
  private static final List<String> NUMBERED =
      List.of("inquiry", "library", "plan", "runoff", "account", "audit_line");

  private ImportedRows() {}

  /** Makes heads findable, and lets new rows be numbered behind those that are there. */
  public static void complete(Handle handle, Dialect dialect) {
    RevisionRows rows = new RevisionRows("inquiry");
    List<Long> ids = handle.createQuery("SELECT id FROM inquiry").mapTo(Long.class).list();
    for (long id : ids) {
      int head =
          handle
              .createQuery("SELECT head FROM inquiry WHERE id = :id")
              .bind("id", id)
              .mapTo(Integer.class)
              .one();
      Revision revision = rows.find(handle, id, head).orElseThrow();
      InquiryTable.makeFindable(handle, revision);
    }
    if (dialect == Dialect.POSTGRESQL) { // SQLite counts on from the highest by itself
      NUMBERED.forEach(table -> countOn(handle, table));
    }
  }

  private static void countOn(Handle handle, String table) {
    handle
        .createQuery(
            "SELECT setval(pg_get_serial_sequence('"
                + table
                + "', 'id'), COALESCE(MAX(id), 1), MAX(id) IS NOT NULL) FROM "
                + table)
        .mapTo(Long.class)
        .one();
  }
}
