package drumline.app.shelf;

/**
 * An inquiry was changed.
 *
 * @param id the inquiry
 * @param revision its revision now
 * @param changedBy who
 * @param changedAt when, ISO 8601 in UTC
 */
public record Change(String id, int revision, String changedBy, String changedAt) {}
