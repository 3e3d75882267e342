package drumline.store.entry;

/** How a revision came about. */
public enum RevisionKind {
  /** The first revision. */
  CREATED,
  /** The first revision, copied from another inquiry or library. */
  COPIED,
  /** New text. */
  SAVED,
  /** New name, same text. */
  RENAMED,
  /** Name and text of an earlier revision, one step back. */
  UNDONE,
  /** Name and text that an undo had left, one step forward. */
  REDONE
}
