package drumline.store.api;

import drumline.store.entry.InquiryEntry;
import drumline.store.entry.InquiryFilter;
import drumline.store.entry.Revision;
import java.util.List;
import java.util.Optional;

/** The inquiries. */
public interface InquiryShelf extends RevisedShelf {

  /**
   * A new inquiry with its first revision.
   *
   * @throws IllegalArgumentException if name or who is blank
   */
  Revision create(String name, String text, String who);

  /** Those that fit, last changed first; no text is read. */
  List<InquiryEntry> list(InquiryFilter filter);

  /** One inquiry's line of the list, or empty. */
  Optional<InquiryEntry> findEntry(long id);

  /**
   * Keeps what the list shows. One reckoned from an older revision than the one kept is left aside.
   *
   * @throws IllegalArgumentException if there is no such id or revision, or the text is no JSON
   *     object
   */
  void summary(long id, int revision, String json);
}
