package drumline.store.entry;

/**
 * A revision with its text.
 *
 * @param entry its line in the history
 * @param text the text as it was given, to the letter
 */
public record Revision(RevisionEntry entry, String text) {

  /** The inquiry or library. */
  public long id() {
    return entry.id();
  }

  /** Number in the history, from 1. */
  public int revision() {
    return entry.revision();
  }

  /** The name as of this revision. */
  public String name() {
    return entry.name();
  }
}
