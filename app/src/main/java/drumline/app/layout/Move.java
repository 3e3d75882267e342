package drumline.app.layout;

import org.jspecify.annotations.Nullable;

/**
 * A wish to have an operation elsewhere.
 *
 * @param operationId the operation
 * @param slideId the slide, and so the position; null for the same, or with a position for the
 *     first there that suits
 * @param position the position, or null
 * @param startS where its block was put, or null
 * @param order its place in the order of the position, from 1, or null
 * @param spindleRevPerMin another speed, or null
 */
public record Move(
    String operationId,
    @Nullable String slideId,
    @Nullable Integer position,
    @Nullable Double startS,
    @Nullable Integer order,
    @Nullable Double spindleRevPerMin) {}
