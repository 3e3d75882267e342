package drumline.cycle.timeline;

import java.util.List;

/**
 * One operation on the clock.
 *
 * @param operationId the operation
 * @param slideId slide that carries the tool
 * @param spindleRevPerMin work spindle speed; 0 when held or controlled
 * @param startS begin of the approach, from the end of the index
 * @param endS end of the retract
 * @param elements what happens in between, in order and without gaps
 */
public record OperationSpan(
    String operationId,
    String slideId,
    double spindleRevPerMin,
    double startS,
    double endS,
    List<TimeElement> elements) {

  /** Copies the list. */
  public OperationSpan {
    elements = List.copyOf(elements);
  }

  /** Length in seconds. */
  public double lengthS() {
    return endS - startS;
  }
}
