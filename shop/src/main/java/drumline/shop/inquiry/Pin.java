package drumline.shop.inquiry;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Something about an operation's place that the user fixes.
 *
 * @param operationId the operation
 * @param position position it must be in, if fixed
 * @param slideId slide it must be on, or empty
 * @param spindleRevPerMin speed it must run at, if fixed
 */
public record Pin(
    String operationId, OptionalInt position, String slideId, OptionalDouble spindleRevPerMin) {}
