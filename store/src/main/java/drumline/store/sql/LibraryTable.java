package drumline.store.sql;

import drumline.store.api.LibraryShelf;
import drumline.store.database.Database;
import drumline.store.entry.LibraryEntry;
import drumline.store.entry.LibraryKind;
import drumline.store.entry.Revision;
import drumline.store.entry.Standing;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** The libraries in their tables. */
public final class LibraryTable extends RevisedTable implements LibraryShelf {
  private static final String LIST =
      "SELECT l.id, l.created_at_ms, l.copied_from, l.standing, l.kind AS library_kind, "
          + RevisionRows.ENTRY
          + " FROM library l JOIN library_revision r ON r.owner = l.id AND r.revision = l.head"
          + " WHERE l.kind = :kind AND l.standing = :standing";

  /** Of a database and the time of day. */
  public LibraryTable(Database database, Clock clock) {
    super(database, clock, "library");
  }

  @Override
  public Revision create(LibraryKind kind, String name, String text, String who) {
    return begin((handle, atMs) -> addOwner(handle, atMs, kind), name, text, who);
  }

  private static long addOwner(Handle handle, long atMs, LibraryKind kind) {
    return handle
        .createQuery(
            "INSERT INTO library (head, created_at_ms, standing, kind)"
                + " VALUES (1, :atMs, 'OPEN', :kind) RETURNING id")
        .bind("atMs", atMs)
        .bind("kind", kind.name())
        .mapTo(Long.class)
        .one();
  }

  @Override
  long copyOwner(Handle handle, long atMs, long copiedFrom) {
    return handle
        .createQuery(
            "INSERT INTO library (head, created_at_ms, standing, kind, copied_from)"
                + " SELECT 1, :atMs, 'OPEN', kind, id FROM library WHERE id = :from RETURNING id")
        .bind("atMs", atMs)
        .bind("from", copiedFrom)
        .mapTo(Long.class)
        .one();
  }

  @Override
  void added(Handle handle, Revision revision) {} // libraries are few: nothing is kept for finding

  @Override
  public List<LibraryEntry> list(LibraryKind kind, Standing standing) {
    List<LibraryEntry> found =
        database()
            .read(
                handle ->
                    handle
                        .createQuery(LIST)
                        .bind("kind", kind.name())
                        .bind("standing", standing.name())
                        .map(LibraryTable::entry)
                        .list());
    return found.stream()
        .sorted(Comparator.comparing(LibraryEntry::name).thenComparing(LibraryEntry::id))
        .toList();
  }

  private static LibraryEntry entry(ResultSet row, StatementContext context) throws SQLException {
    return new LibraryEntry(
        row.getLong("id"),
        LibraryKind.valueOf(row.getString("library_kind")),
        RevisionRows.entry(row, context),
        Instant.ofEpochMilli(row.getLong("created_at_ms")),
        RevisionRows.nullableLong(row, "copied_from"),
        Standing.valueOf(row.getString("standing")));
  }
}
