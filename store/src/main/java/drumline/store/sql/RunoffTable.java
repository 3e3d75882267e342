package drumline.store.sql;

import drumline.store.database.BrokenConstraint;
import drumline.store.database.Database;
import drumline.store.entry.Standing;
import drumline.store.measure.Measurement;
import drumline.store.measure.Runoff;
import drumline.store.measure.RunoffEntry;
import drumline.store.measure.RunoffHead;
import drumline.store.measure.RunoffShelf;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.StatementContext;

/** The run-offs in their tables. */
public final class RunoffTable implements RunoffShelf {
  private static final String LIST =
      "SELECT o.*, (SELECT COUNT(*) FROM measurement m WHERE m.runoff = o.id) AS measured"
          + " FROM runoff o WHERE ";

  private final Database database;
  private final Clock clock;

  /** Of a database and the time of day. */
  public RunoffTable(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  @Override
  public Runoff begin(RunoffHead head, String who) {
    long atMs = clock.millis();
    try {
      return database.write(
          handle -> {
            long id =
                handle
                    .createQuery(
                        "INSERT INTO runoff (inquiry, revision, machine, title, who, at_ms,"
                            + " standing) VALUES (:inquiry, :revision, :machine, :title, :who,"
                            + " :atMs, 'OPEN') RETURNING id")
                    .bind("inquiry", head.inquiryId())
                    .bind("revision", head.revision())
                    .bind("machine", Words.kept("machine", head.machine()))
                    .bind("title", Words.kept("title", head.title()))
                    .bind("who", Words.required("who", who))
                    .bind("atMs", atMs)
                    .mapTo(Long.class)
                    .one();
            AuditLines.write(handle, atMs, who, "begun", subject(id), "");
            return runoff(handle, id).orElseThrow();
          });
    } catch (BrokenConstraint e) {
      throw new IllegalArgumentException(
          "there is no revision " + head.revision() + " of inquiry/" + head.inquiryId(), e);
    }
  }

  private static String subject(long id) {
    return "runoff/" + id;
  }

  @Override
  public Runoff add(long id, List<Measurement> measurements, String who) {
    long atMs = clock.millis();
    try {
      return database.write(
          handle -> {
            touch(handle, id);
            insert(handle, id, measurements);
            String note = measurements.size() + " readings";
            AuditLines.write(handle, atMs, who, "measured", subject(id), note);
            return runoff(handle, id).orElseThrow();
          });
    } catch (BrokenConstraint e) {
      throw new IllegalArgumentException(
          "a characteristic of a piece is measured twice in "
              + subject(id)
              + "; allowed: one reading for each characteristic, spindle and piece",
          e);
    }
  }

  /** Takes the row, so that two who add readings come one after the other. */
  private static void touch(Handle handle, long id) {
    int found =
        handle
            .createUpdate("UPDATE runoff SET standing = standing WHERE id = :id")
            .bind("id", id)
            .execute();
    if (found == 0) {
      throw unknown(id);
    }
  }

  private static IllegalArgumentException unknown(long id) {
    return new IllegalArgumentException("there is no runoff " + id);
  }

  private static void insert(Handle handle, long id, List<Measurement> measurements) {
    int line =
        handle
            .createQuery("SELECT COALESCE(MAX(line), 0) FROM measurement WHERE runoff = :id")
            .bind("id", id)
            .mapTo(Integer.class)
            .one();
    PreparedBatch batch =
        handle.prepareBatch(
            "INSERT INTO measurement (runoff, line, characteristic, spindle, piece, reading, unit)"
                + " VALUES (:id, :line, :characteristic, :spindle, :piece, :reading, :unit)");
    for (Measurement one : measurements) {
      line++;
      batch
          .bind("id", id)
          .bind("line", line)
          .bind("characteristic", Words.required("characteristic", one.characteristic()))
          .bind("spindle", one.spindle())
          .bind("piece", one.piece())
          .bind("reading", one.value().toPlainString())
          .bind("unit", Words.kept("unit", one.unit()))
          .add();
    }
    if (!measurements.isEmpty()) {
      batch.execute();
    }
  }

  @Override
  public Optional<Runoff> findRunoff(long id) {
    return database.read(handle -> runoff(handle, id));
  }

  private static Optional<Runoff> runoff(Handle handle, long id) {
    return handle
        .createQuery(LIST + "o.id = :id")
        .bind("id", id)
        .map(RunoffTable::entry)
        .findOne()
        .map(entry -> new Runoff(entry, measurements(handle, id)));
  }

  private static List<Measurement> measurements(Handle handle, long id) {
    return handle
        .createQuery("SELECT * FROM measurement WHERE runoff = :id ORDER BY line")
        .bind("id", id)
        .map(
            (row, context) ->
                new Measurement(
                    row.getString("characteristic"),
                    row.getInt("spindle"),
                    row.getInt("piece"),
                    new BigDecimal(row.getString("reading")),
                    row.getString("unit")))
        .list();
  }

  @Override
  public List<RunoffEntry> list(long inquiryId) {
    return database.read(
        handle ->
            handle
                .createQuery(LIST + "o.inquiry = :inquiry ORDER BY o.id")
                .bind("inquiry", inquiryId)
                .map(RunoffTable::entry)
                .list());
  }

  @Override
  public void archive(long id, String who, String why) {
    long atMs = clock.millis();
    database.write(
        handle -> {
          int moved =
              handle
                  .createUpdate("UPDATE runoff SET standing = 'ARCHIVED' WHERE id = :id")
                  .bind("id", id)
                  .execute();
          if (moved == 0) {
            throw unknown(id);
          }
          AuditLines.write(handle, atMs, who, "archived", subject(id), why);
          return moved;
        });
  }

  private static RunoffEntry entry(ResultSet row, StatementContext context) throws SQLException {
    return new RunoffEntry(
        row.getLong("id"),
        new RunoffHead(
            row.getLong("inquiry"),
            row.getInt("revision"),
            row.getString("machine"),
            row.getString("title")),
        row.getString("who"),
        Instant.ofEpochMilli(row.getLong("at_ms")),
        Standing.valueOf(row.getString("standing")),
        row.getInt("measured"));
  }
}
