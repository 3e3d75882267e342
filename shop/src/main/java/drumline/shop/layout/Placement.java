package drumline.shop.layout;

/**
 * An operation's place.
 *
 * @param operationId the operation
 * @param slideId the slide, and so the position
 * @param spindleRevPerMin work spindle speed; 0 when held or controlled
 * @param plannedStartS start that the planner found, from the end of the index; the cycle's
 *     timeline keeps the order and moves starts forward where there is room
 */
public record Placement(
    String operationId, String slideId, double spindleRevPerMin, double plannedStartS) {}
