package drumline.app.answer;

import org.jspecify.annotations.Nullable;

/**
 * The standing head line of an inquiry.
 *
 * @param id the inquiry
 * @param name its title
 * @param revision revision of the inquiry that it belongs to
 * @param thumbnailSvg small drawing of the piece, or null
 * @param canUndo whether there is a change to take back
 * @param canRedo whether there is one to make again
 * @param errorCount errors in its text
 * @param head figures of the head line
 * @param planningJobId job that plans it now, or null
 * @param changedAt when it was changed last, ISO 8601 in UTC
 * @param changedBy who changed it
 */
public record HeadAnswer(
    String id,
    String name,
    int revision,
    @Nullable String thumbnailSvg,
    boolean canUndo,
    boolean canRedo,
    int errorCount,
    Head head,
    @Nullable String planningJobId,
    String changedAt,
    String changedBy) {}
