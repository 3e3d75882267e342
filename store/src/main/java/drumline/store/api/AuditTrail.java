package drumline.store.api;

import drumline.store.entry.AuditEntry;
import java.util.List;

/** Who did what to what; each change in the store writes its line together with the change. */
public interface AuditTrail {

  /**
   * Adds a line for something that the store does not see itself, e.g. a log-in.
   *
   * @throws IllegalArgumentException if who, what or subject is blank
   */
  void write(String who, String what, String subject, String note);

  /**
   * The last lines, newest first.
   *
   * @throws IllegalArgumentException if the count is not positive
   */
  List<AuditEntry> latest(int lineCount);

  /** All lines of one subject, e.g. {@code inquiry/7}, oldest first. */
  List<AuditEntry> of(String subject);
}
