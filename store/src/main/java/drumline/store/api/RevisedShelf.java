package drumline.store.api;

import drumline.store.entry.Revision;
import drumline.store.entry.RevisionEntry;
import java.util.List;
import java.util.Optional;

/**
 * Texts with their whole history. Each change is a new revision; none is ever changed or removed.
 * Whoever changes says which revision was on the screen, so that nobody overwrites another unseen.
 */
public interface RevisedShelf {

  /** The present revision, or empty if there is no such id. */
  Optional<Revision> findHead(long id);

  /**
   * The present revision.
   *
   * @throws IllegalArgumentException if there is no such id
   */
  Revision head(long id);

  /**
   * Any revision.
   *
   * @throws IllegalArgumentException if there is no such id or revision
   */
  Revision revision(long id, int revision);

  /**
   * The history without texts, oldest first.
   *
   * @throws IllegalArgumentException if there is no such id
   */
  List<RevisionEntry> revisions(long id);

  /**
   * Saves a text as a new revision; if it is the present text to the letter, the present revision
   * is answered and nothing is written.
   *
   * @throws StaleRevisionException if the expected revision is not the present one
   * @throws IllegalArgumentException if there is no such id, or who is blank
   */
  Revision save(long id, int expectedRevision, String text, String who, String what)
      throws StaleRevisionException;

  /**
   * Gives another name, as a new revision.
   *
   * @throws StaleRevisionException if the expected revision is not the present one
   * @throws IllegalArgumentException if there is no such id, or name or who is blank
   */
  Revision rename(long id, int expectedRevision, String name, String who)
      throws StaleRevisionException;

  /**
   * One step back, as a new revision; empty at the beginning of the history.
   *
   * @throws StaleRevisionException if the expected revision is not the present one
   * @throws IllegalArgumentException if there is no such id
   */
  Optional<Revision> undo(long id, int expectedRevision, String who) throws StaleRevisionException;

  /**
   * One step forward again, as a new revision; empty where the present revision is no undo.
   *
   * @throws StaleRevisionException if the expected revision is not the present one
   * @throws IllegalArgumentException if there is no such id
   */
  Optional<Revision> redo(long id, int expectedRevision, String who) throws StaleRevisionException;

  /**
   * Copies the present text under another name, with a history of its own.
   *
   * @throws IllegalArgumentException if there is no such id, or name or who is blank
   */
  Revision duplicate(long id, String name, String who);

  /**
   * Lays it away; its history stays.
   *
   * @throws IllegalArgumentException if there is no such id
   */
  void archive(long id, String who);

  /**
   * Takes it back into daily use.
   *
   * @throws IllegalArgumentException if there is no such id
   */
  void bringBack(long id, String who);
}
