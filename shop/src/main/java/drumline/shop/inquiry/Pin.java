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
 * @param notPosition position it must not be in, if there is one
 * @param togetherWith operation that it must share a position with, or empty
 */
public record Pin(
    String operationId,
    OptionalInt position,
    String slideId,
    OptionalDouble spindleRevPerMin,
    OptionalInt notPosition,
    String togetherWith) {

  /** A pin of position, slide and speed only. */
  public Pin(
      String operationId, OptionalInt position, String slideId, OptionalDouble spindleRevPerMin) {
    this(operationId, position, slideId, spindleRevPerMin, OptionalInt.empty(), "");
  }

  /** The operation in a position. */
  public static Pin toPosition(String operationId, int position) {
    return new Pin(operationId, OptionalInt.of(position), "", OptionalDouble.empty());
  }
}
