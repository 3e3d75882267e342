package drumline.store.entry;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One line in the list of libraries.
 *
 * @param id number of the library
 * @param kind what it describes
 * @param head its present revision
 * @param created when it was created
 * @param copiedFrom the library it was copied from, or null
 * @param standing open or archived
 */
public record LibraryEntry(
    long id,
    LibraryKind kind,
    RevisionEntry head,
    Instant created,
    @Nullable Long copiedFrom,
    Standing standing) {

  /** The present name. */
  public String name() {
    return head.name();
  }
}
