package drumline.drawing.wall;

import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.TimeElement;
import drumline.drawing.svg.Box;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One operation on the wall.
 *
 * @param span its time
 * @param operation what is done, if the route knows it
 * @param column its column
 * @param box its place: from begin of the approach to end of the retract
 * @param roomAbovePx free height above it in its lane
 * @param roomBelowPx free height below it in its lane
 */
record WallBlock(
    OperationSpan span,
    Optional<Operation> operation,
    WallColumn column,
    Box box,
    double roomAbovePx,
    double roomBelowPx) {

  private static final double LANE_INSET = 1.5;

  static List<WallBlock> of(List<WallColumn> columns, Route route, TimeScale time) {
    List<WallBlock> blocks = new ArrayList<>();
    for (WallColumn column : columns) {
      for (WallLane lane : column.lanes()) {
        List<OperationSpan> spans =
            column.timeline().operations().stream()
                .filter(span -> span.slideId().equals(lane.slideId()))
                .toList();
        for (int i = 0; i < spans.size(); i++) {
          OperationSpan span = spans.get(i);
          double beforeS = i == 0 ? 0 : spans.get(i - 1).endS();
          double afterS = i + 1 < spans.size() ? spans.get(i + 1).startS() : time.longestS();
          blocks.add(
              new WallBlock(
                  span,
                  route.findOperation(span.operationId()),
                  column,
                  box(lane, time, span.startS(), span.endS()),
                  (span.startS() - beforeS) * time.pxPerS(),
                  (afterS - span.endS()) * time.pxPerS()));
        }
      }
    }
    return blocks;
  }

  private static Box box(WallLane lane, TimeScale time, double startS, double endS) {
    return new Box(
        lane.x() + LANE_INSET,
        time.y(startS),
        lane.width() - 2 * LANE_INSET,
        (endS - startS) * time.pxPerS());
  }

  String title() {
    return operation.map(Operation::title).orElse(span.operationId());
  }

  /** Place of one stretch of its time. */
  Box part(TimeElement element, TimeScale time) {
    double y = time.y(element.startS());
    return new Box(box.x(), y, box.width(), element.lengthS() * time.pxPerS());
  }

  /** Seconds in which it does this. */
  double secondsOf(TimeElement.Kind kind) {
    return span.elements().stream()
        .filter(element -> element.kind() == kind)
        .mapToDouble(TimeElement::lengthS)
        .sum();
  }

  /** Seconds in which the tool moves without cutting. */
  double movingS() {
    return secondsOf(TimeElement.Kind.APPROACH) + secondsOf(TimeElement.Kind.RETRACT);
  }

  /** From the first to the last moment at the cut; the whole block where it never cuts. */
  Box cutBox(TimeScale time) {
    double fromS = Double.POSITIVE_INFINITY;
    double toS = Double.NEGATIVE_INFINITY;
    for (TimeElement element : span.elements()) {
      if (isAtWork(element.kind())) {
        fromS = Math.min(fromS, element.startS());
        toS = Math.max(toS, element.endS());
      }
    }
    return fromS < toS
        ? new Box(box.x(), time.y(fromS), box.width(), (toS - fromS) * time.pxPerS())
        : box;
  }

  private static boolean isAtWork(TimeElement.Kind kind) {
    return kind == TimeElement.Kind.CUT || kind == TimeElement.Kind.DWELL;
  }
}
