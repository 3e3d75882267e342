package drumline.app.answer.layout;

import org.jspecify.annotations.Nullable;

/**
 * What is fixed about an operation's place.
 *
 * @param operationId the operation
 * @param position position, or null
 * @param slideId slide, or null
 * @param spindleRevPerMin speed, or null
 */
public record PinAnswer(
    String operationId,
    @Nullable Integer position,
    @Nullable String slideId,
    @Nullable Double spindleRevPerMin) {}
