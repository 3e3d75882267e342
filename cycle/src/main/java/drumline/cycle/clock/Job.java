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
 * @param cutStartS begin of the cut
 * @param cutEndS end of the cut and dwell
 * @param endS end
 */
record Job(
    Operation operation,
    ToolSlide slide,
    Placement placement,
    SpindleState state,
    double startS,
    double cutStartS,
    double cutEndS,
    double endS) {

  static Job of(Operation operation, ToolSlide slide, Placement placement) {
    double n = placement.spindleRevPerMin();
    SpindleState state = SpindleState.of(operation, n);
    double approachS = OperationTime.rapidS(operation.cut().approachMm(), slide);
    double retractS = OperationTime.rapidS(OperationTime.retractMm(operation), slide);
    double lengthS = OperationTime.lengthS(operation, slide, n);
    return new Job(operation, slide, placement, state, 0, approachS, lengthS - retractS, lengthS);
  }

  /** The same, beginning at another moment. */
  Job at(double newStartS) {
    double later = newStartS - startS;
    return new Job(
        operation,
        slide,
        placement,
        state,
        newStartS,
        cutStartS + later,
        cutEndS + later,
        endS + later);
  }

  String id() {
    return operation.id();
  }

  /** Whether both are in cut at some moment. */
  boolean cutsWith(Job other) {
    return cutStartS < other.cutEndS && other.cutStartS < cutEndS;
  }

  OperationSpan span() {
    List<TimeElement> elements =
        OperationTime.elements(operation, slide, placement.spindleRevPerMin(), startS);
    double end = elements.isEmpty() ? startS : elements.get(elements.size() - 1).endS();
    return new OperationSpan(id(), slide.id(), state.revPerMin(), startS, end, elements);
  }
}
