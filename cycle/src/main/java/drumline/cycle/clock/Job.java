package drumline.cycle.clock;

import drumline.cycle.spindle.SpindleState;
import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.TimeElement;
import drumline.shop.layout.Placement;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import java.util.List;

/**
 * An operation with its place, before and after it is given a start.
 *
 * @param operation what is done
 * @param slide slide that carries the tool
 * @param placement place and planned start
 * @param state what it asks of the spindle
 * @param startS begin
 * @param endS end
 */
record Job(
    Operation operation,
    ToolSlide slide,
    Placement placement,
    SpindleState state,
    double startS,
    double endS) {

  static Job of(Operation operation, ToolSlide slide, Placement placement) {
    double n = placement.spindleRevPerMin();
    double lengthS = OperationTime.lengthS(operation, slide, n);
    return new Job(operation, slide, placement, SpindleState.of(operation, n), 0, lengthS);
  }

  /** The same, beginning at another moment. */
  Job at(double newStartS) {
    return new Job(operation, slide, placement, state, newStartS, newStartS + endS - startS);
  }

  String id() {
    return operation.id();
  }

  /** Whether both take time at some moment. */
  boolean runsWith(Job other) {
    return startS < other.endS && other.startS < endS;
  }

  OperationSpan span() {
    List<TimeElement> elements =
        OperationTime.elements(operation, slide, placement.spindleRevPerMin(), startS);
    double end = elements.isEmpty() ? startS : elements.get(elements.size() - 1).endS();
    return new OperationSpan(id(), slide.id(), state.revPerMin(), startS, end, elements);
  }
}
