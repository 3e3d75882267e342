package drumline.store.sql;

import drumline.store.entry.Revision;
import drumline.store.entry.RevisionEntry;
import drumline.store.entry.RevisionKind;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import org.jspecify.annotations.Nullable;

/** The table of revisions of inquiries, or of libraries: rows are read and added. */
final class RevisionRows {
  /** All columns but the text. */
  static final String ENTRY =
      "r.owner, r.revision, r.name, r.kind, r.who, r.at_ms, r.what, r.same_as, r.undo_to,"
          + " r.redo_to";

  private final String table;

  /** Of the owner's table. */
  RevisionRows(String owner) {
    this.table = owner + "_revision";
  }

  void add(Handle handle, Revision revision) {
    RevisionEntry entry = revision.entry();
    handle
        .createUpdate(
            "INSERT INTO "
                + table
                + " (owner, revision, name, kind, who, at_ms, what, same_as, undo_to, redo_to,"
                + " text) VALUES (:owner, :revision, :name, :kind, :who, :atMs, :what, :sameAs,"
                + " :undoTo, :redoTo, :text)")
        .bind("owner", entry.id())
        .bind("revision", entry.revision())
        .bind("name", Words.required("name", entry.name()))
        .bind("kind", entry.kind().name())
        .bind("who", Words.required("who", entry.who()))
        .bind("atMs", entry.when().toEpochMilli())
        .bind("what", Words.kept("what", entry.what()))
        .bind("sameAs", entry.sameAs())
        .bind("undoTo", entry.undoTo())
        .bind("redoTo", entry.redoTo())
        .bind("text", Words.kept("text", revision.text()))
        .execute();
  }

  Optional<Revision> find(Handle handle, long id, int revision) {
    return handle
        .createQuery("SELECT * FROM " + table + " WHERE owner = :id AND revision = :revision")
        .bind("id", id)
        .bind("revision", revision)
        .map((row, context) -> new Revision(entry(row, context), row.getString("text")))
        .findOne();
  }

  List<RevisionEntry> history(Handle handle, long id) {
    return handle
        .createQuery(
            "SELECT " + ENTRY + " FROM " + table + " r WHERE owner = :id ORDER BY revision")
        .bind("id", id)
        .map(RevisionRows::entry)
        .list();
  }

  static RevisionEntry entry(ResultSet row, StatementContext context) throws SQLException {
    return new RevisionEntry(
        row.getLong("owner"),
        row.getInt("revision"),
        row.getString("name"),
        RevisionKind.valueOf(row.getString("kind")),
        row.getString("who"),
        Instant.ofEpochMilli(row.getLong("at_ms")),
        row.getString("what"),
        row.getInt("same_as"),
        nullableInt(row, "undo_to"),
        nullableInt(row, "redo_to"));
  }

  static @Nullable Integer nullableInt(ResultSet row, String column) throws SQLException {
    int number = row.getInt(column);
    return row.wasNull() ? null : number;
  }

  static @Nullable Long nullableLong(ResultSet row, String column) throws SQLException {
    long number = row.getLong(column);
    return row.wasNull() ? null : number;
  }
}
