package drumline.store.api;

import drumline.store.measure.RunoffShelf;
import java.nio.file.Path;

/** Everything that Drumline keeps. One store may be used by many threads, and closed once. */
public interface Store extends AutoCloseable {

  /** The inquiries. */
  InquiryShelf inquiries();

  /** The libraries. */
  LibraryShelf libraries();

  /** The plans. */
  PlanShelf plans();

  /** The run-offs. */
  RunoffShelf runoffs();

  /** The team's accounts. */
  AccountShelf accounts();

  /** Who did what. */
  AuditTrail auditTrail();

  /** How much it holds. */
  StoreCount count();

  /**
   * Writes a backup into one new file, while others go on working.
   *
   * @throws StoreFault if there is such a file already, or it cannot be written
   */
  void backUpTo(Path file);

  /**
   * Writes everything as plain files into a new or empty folder; the same content gives the same
   * files, whichever database it is in.
   *
   * @throws StoreFault if the folder holds something, or cannot be written
   */
  void exportTo(Path folder);

  /**
   * Reads what {@link #exportTo} wrote, all or nothing. The store must be empty.
   *
   * @throws StoreFault with every problem found, if the store is not empty or the folder is not
   *     whole
   */
  void importFrom(Path folder);

  /** Where it is kept, for people: the file, or server and database without the password. */
  String place();

  @Override
  void close();
}
