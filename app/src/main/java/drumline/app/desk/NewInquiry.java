package drumline.app.desk;

import org.jspecify.annotations.Nullable;

/**
 * A wish for a new inquiry.
 *
 * @param from template, text or inquiry
 * @param title title of the new one, or null
 * @param units metric or inch for the template; null for metric
 * @param text the text, or null
 * @param inquiryId the inquiry to copy, or null
 */
public record NewInquiry(
    String from,
    @Nullable String title,
    @Nullable String units,
    @Nullable String text,
    @Nullable String inquiryId) {}
