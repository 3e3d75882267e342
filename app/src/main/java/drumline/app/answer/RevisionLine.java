package drumline.app.answer;

import org.jspecify.annotations.Nullable;

/**
 * A line in the history of an inquiry.
 *
 * @param revision revision of the inquiry that it belongs to
 * @param madeAt when, ISO 8601 in UTC
 * @param madeBy who
 * @param note what was changed
 * @param layoutId layout that was the present one, or null
 */
public record RevisionLine(
    int revision, String madeAt, String madeBy, String note, @Nullable String layoutId) {}
