package drumline.store.api;

import drumline.store.measure.RunoffShelf;

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

  /** Where it is kept, for people: the file, or server and database without the password. */
  String place();

  @Override
  void close();
}
