package drumline.store.sql;

import drumline.store.api.RevisedShelf;
import drumline.store.api.StaleRevisionException;
import drumline.store.database.Database;
import drumline.store.entry.Revision;
import drumline.store.entry.RevisionEntry;
import drumline.store.entry.RevisionKind;
import drumline.store.entry.Standing;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Texts with their history, in a table of owners and a table of revisions. */
abstract sealed class RevisedTable implements RevisedShelf permits InquiryTable, LibraryTable {
  private final Database database;
  private final Clock clock;
  private final String table;
  private final RevisionRows rows;

  RevisedTable(Database database, Clock clock, String table) {
    this.database = database;
    this.clock = clock;
    this.table = table;
    this.rows = new RevisionRows(table);
  }

  /** What else must be kept when a revision was added. */
  abstract void added(Handle handle, Revision revision);

  /** Adds an owner's row like that of another, and answers its id. */
  abstract long copyOwner(Handle handle, long atMs, long copiedFrom);

  final Database database() {
    return database;
  }

  final RevisionRows rows() {
    return rows;
  }

  final String subject(long id) {
    return table + "/" + id;
  }

  final IllegalArgumentException unknown(long id) {
    return new IllegalArgumentException("there is no " + table + " " + id);
  }

  /** Adds an owner's row and its first revision. */
  final Revision begin(Owner owner, String name, String text, String who) {
    long atMs = clock.millis();
    return database.write(
        handle -> {
          long id = owner.add(handle, atMs);
          return first(handle, entry(id, name, RevisionKind.CREATED, who, atMs, ""), text);
        });
  }

  private static RevisionEntry entry(
      long id, String name, RevisionKind kind, String who, long atMs, String what) {
    return new RevisionEntry(
        id, 1, name, kind, who, Instant.ofEpochMilli(atMs), what, 1, null, null);
  }

  private Revision first(Handle handle, RevisionEntry entry, String text) {
    Revision first = new Revision(entry, text);
    add(handle, first);
    return first;
  }

  private void add(Handle handle, Revision revision) {
    RevisionEntry entry = revision.entry();
    rows.add(handle, revision);
    added(handle, revision);
    AuditLines.write(
        handle,
        entry.when().toEpochMilli(),
        entry.who(),
        entry.kind().name().toLowerCase(Locale.ROOT),
        subject(entry.id()),
        "revision " + entry.revision());
  }

  @Override
  public Optional<Revision> findHead(long id) {
    return database.read(handle -> findHead(handle, id));
  }

  private Optional<Revision> findHead(Handle handle, long id) {
    return headNumber(handle, id).flatMap(head -> rows.find(handle, id, head));
  }

  private Optional<Integer> headNumber(Handle handle, long id) {
    return handle
        .createQuery("SELECT head FROM " + table + " WHERE id = :id")
        .bind("id", id)
        .mapTo(Integer.class)
        .findOne();
  }

  @Override
  public Revision head(long id) {
    return findHead(id).orElseThrow(() -> unknown(id));
  }

  @Override
  public Revision revision(long id, int revision) {
    return database
        .read(handle -> rows.find(handle, id, revision))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "there is no revision " + revision + " of " + subject(id)));
  }

  @Override
  public List<RevisionEntry> revisions(long id) {
    List<RevisionEntry> history = database.read(handle -> rows.history(handle, id));
    if (history.isEmpty()) {
      throw unknown(id);
    }
    return history;
  }

  @Override
  public Revision save(long id, int expectedRevision, String text, String who, String what)
      throws StaleRevisionException {
    return change(
            id,
            expectedRevision,
            who,
            (handle, next) ->
                next.head().text().equals(text)
                    ? Optional.of(next.head())
                    : Optional.of(next.saved(text, what)))
        .orElseThrow();
  }

  @Override
  public Revision rename(long id, int expectedRevision, String name, String who)
      throws StaleRevisionException {
    return change(id, expectedRevision, who, (handle, next) -> Optional.of(next.renamed(name)))
        .orElseThrow();
  }

  @Override
  public Optional<Revision> undo(long id, int expectedRevision, String who)
      throws StaleRevisionException {
    return change(
        id,
        expectedRevision,
        who,
        (handle, next) ->
            Optional.ofNullable(next.head().entry().undoTo())
                .flatMap(target -> rows.find(handle, id, target))
                .map(next::undone));
  }

  @Override
  public Optional<Revision> redo(long id, int expectedRevision, String who)
      throws StaleRevisionException {
    return change(
        id,
        expectedRevision,
        who,
        (handle, next) ->
            Optional.ofNullable(next.head().entry().redoTo())
                .flatMap(target -> rows.find(handle, id, target))
                .map(next::redone));
  }

  private Optional<Revision> change(long id, int expectedRevision, String who, Change change)
      throws StaleRevisionException {
    Instant now = Instant.ofEpochMilli(clock.millis());
    return database.write(
        handle -> {
          Revision head = findHead(handle, id).orElseThrow(() -> unknown(id));
          if (head.revision() != expectedRevision) {
            throw new StaleRevisionException(expectedRevision, head.entry());
          }
          Optional<Revision> next = change.make(handle, new NextRevision(head, who, now));
          if (next.isPresent() && next.get().revision() != expectedRevision) {
            moveHead(handle, id, expectedRevision);
            add(handle, next.get());
          }
          return next;
        });
  }

  /** Whoever comes second waits for the row, and then finds it moved. */
  private void moveHead(Handle handle, long id, int expectedRevision)
      throws StaleRevisionException {
    int moved =
        handle
            .createUpdate(
                "UPDATE " + table + " SET head = head + 1 WHERE id = :id AND head = :expected")
            .bind("id", id)
            .bind("expected", expectedRevision)
            .execute();
    if (moved == 0) {
      throw new StaleRevisionException(
          expectedRevision, findHead(handle, id).orElseThrow(() -> unknown(id)).entry());
    }
  }

  @Override
  public Revision duplicate(long id, String name, String who) {
    long atMs = clock.millis();
    return database.write(
        handle -> {
          Revision head = findHead(handle, id).orElseThrow(() -> unknown(id));
          String what = "copied from " + subject(id) + " revision " + head.revision();
          long copy = copyOwner(handle, atMs, id);
          return first(
              handle, entry(copy, name, RevisionKind.COPIED, who, atMs, what), head.text());
        });
  }

  @Override
  public void archive(long id, String who) {
    stand(id, Standing.ARCHIVED, who, "archived");
  }

  @Override
  public void bringBack(long id, String who) {
    stand(id, Standing.OPEN, who, "brought back");
  }

  private void stand(long id, Standing standing, String who, String what) {
    long atMs = clock.millis();
    database.write(
        handle -> {
          int moved =
              handle
                  .createUpdate("UPDATE " + table + " SET standing = :standing WHERE id = :id")
                  .bind("standing", standing.name())
                  .bind("id", id)
                  .execute();
          if (moved == 0) {
            throw unknown(id);
          }
          AuditLines.write(handle, atMs, who, what, subject(id), "");
          return moved;
        });
  }

  /** Adds an owner's row and answers its id. */
  interface Owner {
    long add(Handle handle, long atMs);
  }

  /** Makes the next revision, or none. */
  private interface Change {
    Optional<Revision> make(Handle handle, NextRevision next);
  }
}
