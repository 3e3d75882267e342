package drumline.store.api;

import drumline.store.entry.RevisionEntry;

/** Somebody saved in between: nothing was written, and the caller must choose. */
public final class StaleRevisionException extends Exception {
  private static final long serialVersionUID = 1L;
  private final int expectedRevision;
  private final transient RevisionEntry present;

  /** Of the revision that the caller worked on, and the present one. */
  public StaleRevisionException(int expectedRevision, RevisionEntry present) {
    super(
        "revision "
            + expectedRevision
            + " is no longer the present one: "
            + present.who()
            + " made revision "
            + present.revision()
            + " at "
            + present.when());
    this.expectedRevision = expectedRevision;
    this.present = present;
  }

  /** The revision that the caller worked on. */
  public int expectedRevision() {
    return expectedRevision;
  }

  /** The present revision, with who made it and when. */
  public RevisionEntry present() {
    return present;
  }
}
