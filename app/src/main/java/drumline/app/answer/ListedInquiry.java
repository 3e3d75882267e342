package drumline.app.answer;

import org.jspecify.annotations.Nullable;

/**
 * A line in the list of inquiries.
 *
 * @param id the inquiry
 * @param name its title
 * @param customer who asks
 * @param number print or inquiry number
 * @param partName the piece
 * @param material what it is made of
 * @param machineName machine of the present layout, or null
 * @param thumbnailSvg small drawing of the piece, or null
 * @param revision revision of the inquiry that it belongs to
 * @param isArchived whether it is put away
 * @param errorCount errors in its text
 * @param head figures of the head line
 * @param planningJobId job that plans it now, or null
 * @param changedAt when it was changed last, ISO 8601 in UTC
 * @param changedBy who changed it
 */
public record ListedInquiry(
    String id,
    String name,
    String customer,
    String number,
    String partName,
    String material,
    @Nullable String machineName,
    @Nullable String thumbnailSvg,
    int revision,
    boolean isArchived,
    int errorCount,
    Head head,
    @Nullable String planningJobId,
    String changedAt,
    String changedBy) {}
