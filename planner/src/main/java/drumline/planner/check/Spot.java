package drumline.planner.check;

import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.TimeElement;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import drumline.shop.operation.SpindleCondition;
import java.util.Locale;

/**
 * An operation where and when it is done.
 *
 * @param operation what is done
 * @param slide slide that carries the tool
 * @param position 1 for the first; one more than the last for the pick-up spindle
 * @param span its time
 */
record Spot(Operation operation, ToolSlide slide, int position, OperationSpan span) {
  /** What two times may differ by through floating-point error. */
  static final double ROUNDING_S = 1e-6;

  String id() {
    return operation.id();
  }

  boolean turns() {
    return operation.condition() == SpindleCondition.TURNING;
  }

  boolean isFree() {
    return operation.condition() == SpindleCondition.TURNING_ANY;
  }

  boolean stands() {
    return !turns() && !isFree();
  }

  /** Speed that the spindle must have, 0 where it stands. */
  double revPerMin() {
    return stands() ? 0 : span.spindleRevPerMin();
  }

  /** Whether both take time at some moment. */
  boolean overlaps(Spot other) {
    return span.startS() < other.span.endS() - ROUNDING_S
        && other.span.startS() < span.endS() - ROUNDING_S;
  }

  /** Time from this one's end to the other's start, negative if they overlap. */
  double gapS(Spot other) {
    return other.span.startS() - span.endS();
  }

  /** Whether the tool is in cut at a moment. */
  boolean cutsAt(double momentS) {
    return span.elements().stream()
        .filter(e -> e.kind() == TimeElement.Kind.CUT || e.kind() == TimeElement.Kind.DWELL)
        .anyMatch(e -> e.startS() <= momentS + ROUNDING_S && momentS < e.endS() - 2 * ROUNDING_S);
  }

  double lengthS(TimeElement.Kind kind) {
    return span.elements().stream()
        .filter(e -> e.kind() == kind)
        .mapToDouble(TimeElement::lengthS)
        .sum();
  }

  String words() {
    return String.format(
        Locale.ROOT, "%s (%.3f–%.3f s on %s)", id(), span.startS(), span.endS(), slide.id());
  }
}
