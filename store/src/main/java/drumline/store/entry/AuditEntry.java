package drumline.store.entry;

import java.time.Instant;

/**
 * One line of the audit trail.
 *
 * @param id number of the line, rising with time
 * @param when to the millisecond
 * @param who the person
 * @param what what was done, e.g. {@code saved}
 * @param subject what it was done to, e.g. {@code inquiry/7}
 * @param note more about it, or empty
 */
public record AuditEntry(
    long id, Instant when, String who, String what, String subject, String note) {}
