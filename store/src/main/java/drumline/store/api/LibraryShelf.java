package drumline.store.api;

import drumline.store.entry.LibraryEntry;
import drumline.store.entry.LibraryKind;
import drumline.store.entry.Revision;
import drumline.store.entry.Standing;
import java.util.List;

/** The libraries: materials, tools, machines, house rules. */
public interface LibraryShelf extends RevisedShelf {

  /**
   * A new library with its first revision.
   *
   * @throws IllegalArgumentException if name or who is blank
   */
  Revision create(LibraryKind kind, String name, String text, String who);

  /** Those of one kind, by name. */
  List<LibraryEntry> list(LibraryKind kind, Standing standing);
}
