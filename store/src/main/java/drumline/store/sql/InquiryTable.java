package drumline.store.sql;

import drumline.store.api.InquiryShelf;
import drumline.store.database.Database;
import drumline.store.entry.InquiryEntry;
import drumline.store.entry.InquiryFilter;
import drumline.store.entry.Revision;
import drumline.store.entry.Standing;
import drumline.store.entry.Summary;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.StatementContext;
import org.jspecify.annotations.Nullable;

/** The inquiries in their tables. */
public final class InquiryTable extends RevisedTable implements InquiryShelf {
  private static final String LIST =
      "SELECT i.id, i.created_at_ms, i.copied_from, i.standing, i.summary_revision, i.summary, "
          + RevisionRows.ENTRY
          + " FROM inquiry i JOIN inquiry_revision r ON r.owner = i.id AND r.revision = i.head";

  /** Of a database and the time of day. */
  public InquiryTable(Database database, Clock clock) {
    super(database, clock, "inquiry");
  }

  @Override
  public Revision create(String name, String text, String who) {
    return begin((handle, atMs) -> addOwner(handle, atMs, null), name, text, who);
  }

  @Override
  long copyOwner(Handle handle, long atMs, long copiedFrom) {
    return addOwner(handle, atMs, copiedFrom);
  }

  private static long addOwner(Handle handle, long atMs, @Nullable Long copiedFrom) {
    return handle
        .createQuery(
            "INSERT INTO inquiry (head, created_at_ms, copied_from, standing)"
                + " VALUES (1, :atMs, :copiedFrom, 'OPEN') RETURNING id")
        .bind("atMs", atMs)
        .bind("copiedFrom", copiedFrom)
        .mapTo(Long.class)
        .one();
  }

  @Override
  void added(Handle handle, Revision revision) {
    makeFindable(handle, revision);
  }

  static void makeFindable(Handle handle, Revision revision) {
    handle
        .createUpdate("UPDATE inquiry SET found_by = :foundBy WHERE id = :id")
        .bind("foundBy", FindableText.of(revision))
        .bind("id", revision.id())
        .execute();
  }

  @Override
  public List<InquiryEntry> list(InquiryFilter filter) {
    List<String> words =
        Arrays.stream(FindableText.fold(filter.words()).split("\\s+"))
            .filter(word -> !word.isEmpty())
            .toList();
    StringBuilder sql = new StringBuilder(LIST).append(" WHERE i.standing = :standing");
    for (int index = 0; index < words.size(); index++) {
      sql.append(" AND i.found_by LIKE :word").append(index).append(" ESCAPE '!'");
    }
    sql.append(" ORDER BY r.at_ms DESC, i.id DESC");
    return database()
        .read(
            handle -> {
              Query query = handle.createQuery(sql).bind("standing", filter.standing().name());
              for (int index = 0; index < words.size(); index++) {
                query.bind("word" + index, "%" + literal(words.get(index)) + "%");
              }
              return query.map(InquiryTable::entry).list();
            });
  }

  private static String literal(String word) {
    return word.replace("!", "!!").replace("%", "!%").replace("_", "!_");
  }

  @Override
  public Optional<InquiryEntry> findEntry(long id) {
    return database()
        .read(
            handle ->
                handle
                    .createQuery(LIST + " WHERE i.id = :id")
                    .bind("id", id)
                    .map(InquiryTable::entry)
                    .findOne());
  }

  private static InquiryEntry entry(ResultSet row, StatementContext context) throws SQLException {
    String summary = row.getString("summary");
    return new InquiryEntry(
        row.getLong("id"),
        RevisionRows.entry(row, context),
        Instant.ofEpochMilli(row.getLong("created_at_ms")),
        RevisionRows.nullableLong(row, "copied_from"),
        Standing.valueOf(row.getString("standing")),
        summary == null
            ? null
            : new Summary(row.getInt("summary_revision"), SortedJson.object(summary)));
  }

  @Override
  public void summary(long id, int revision, String json) {
    String sorted = SortedJson.object(json);
    database()
        .write(
            handle -> {
              if (rows().find(handle, id, revision).isEmpty()) {
                throw new IllegalArgumentException(
                    "there is no revision " + revision + " of " + subject(id));
              }
              return handle
                  .createUpdate(
                      "UPDATE inquiry SET summary_revision = :revision, summary = :summary WHERE id"
                          + " = :id AND COALESCE(summary_revision, 0) <= :revision")
                  .bind("revision", revision)
                  .bind("summary", sorted)
                  .bind("id", id)
                  .execute();
            });
  }
}
