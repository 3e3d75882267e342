package drumline.app.answer;

import org.jspecify.annotations.Nullable;

/**
 * A revision with its text.
 *
 * @param revision revision of the inquiry that it belongs to
 * @param madeAt when, ISO 8601 in UTC
 * @param madeBy who
 * @param note what was changed
 * @param layoutId layout that was the present one, or null
 * @param text the text as it stood then
 */
public record RevisionText(
    int revision,
    String madeAt,
    String madeBy,
    String note,
    @Nullable String layoutId,
    String text) {}
