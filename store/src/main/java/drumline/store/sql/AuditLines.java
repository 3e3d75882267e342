package drumline.store.sql;

import drumline.store.api.AuditTrail;
import drumline.store.database.Database;
import drumline.store.entry.AuditEntry;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** The audit trail in its table. */
public final class AuditLines implements AuditTrail {
  private final Database database;
  private final Clock clock;

  /** Of a database and the time of day. */
  public AuditLines(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  static void write(
      Handle handle, long atMs, String who, String what, String subject, String note) {
    handle
        .createUpdate(
            "INSERT INTO audit_line (at_ms, who, what, subject, note)"
                + " VALUES (:atMs, :who, :what, :subject, :note)")
        .bind("atMs", atMs)
        .bind("who", Words.required("who", who))
        .bind("what", Words.required("what", what))
        .bind("subject", Words.required("subject", subject))
        .bind("note", Words.kept("note", note))
        .execute();
  }

  @Override
  public void write(String who, String what, String subject, String note) {
    database.write(
        handle -> {
          write(handle, clock.millis(), who, what, subject, note);
          return 1;
        });
  }

  @Override
  public List<AuditEntry> latest(int lineCount) {
    if (lineCount < 1) {
      throw new IllegalArgumentException("lineCount is " + lineCount + "; allowed: from 1");
    }
    return database.read(
        handle ->
            handle
                .createQuery("SELECT * FROM audit_line ORDER BY id DESC LIMIT :lineCount")
                .bind("lineCount", lineCount)
                .map(AuditLines::line)
                .list());
  }

  @Override
  public List<AuditEntry> of(String subject) {
    return database.read(
        handle ->
            handle
                .createQuery("SELECT * FROM audit_line WHERE subject = :subject ORDER BY id")
                .bind("subject", subject)
                .map(AuditLines::line)
                .list());
  }

  private static AuditEntry line(ResultSet row, StatementContext context) throws SQLException {
    return new AuditEntry(
        row.getLong("id"),
        Instant.ofEpochMilli(row.getLong("at_ms")),
        row.getString("who"),
        row.getString("what"),
        row.getString("subject"),
        row.getString("note"));
  }
}
