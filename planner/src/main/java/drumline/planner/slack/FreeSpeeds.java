package drumline.planner.slack;

import drumline.cycle.clock.CycleClock;
import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.Timeline;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Speeds of the work spindle under driven tools that do not mind it: that of the turning operation
 * nearest in time, so that the spindle need not change; a slow one where nothing turns.
 */
public final class FreeSpeeds {
  /** Speed where nothing else turns in the position; from memory, easy on everything. */
  private static final double QUIET_REV_PER_MIN = 1000;

  private FreeSpeeds() {}

  /** The layout with settled speeds; times stay as they are. */
  public static Layout settle(Route route, CycleClock clock, Layout layout) {
    Timeline timeline = clock.timeline(layout);
    List<PositionTimeline> all = new ArrayList<>(timeline.positions());
    PositionTimeline back = timeline.back();
    if (back != null) {
      all.add(back);
    }
    Map<String, Double> speeds = new HashMap<>();
    for (PositionTimeline position : all) {
      for (OperationSpan span : position.operations()) {
        if (isFree(route, span)) {
          speeds.put(span.operationId(), nearest(route, position, span));
        }
      }
    }
    return new Layout(
        layout.machineName(), layout.placements().stream().map(p -> at(p, speeds)).toList());
  }

  private static Placement at(Placement placement, Map<String, Double> speeds) {
    Double speed = speeds.get(placement.operationId());
    return speed == null
        ? placement
        : new Placement(
            placement.operationId(), placement.slideId(), speed, placement.plannedStartS());
  }

  private static double nearest(Route route, PositionTimeline position, OperationSpan span) {
    return position.operations().stream()
        .filter(
            other -> route.operation(other.operationId()).condition() == SpindleCondition.TURNING)
        .min(Comparator.comparingDouble(other -> apartS(span, other)))
        .map(OperationSpan::spindleRevPerMin)
        .orElse(QUIET_REV_PER_MIN);
  }

  private static double apartS(OperationSpan one, OperationSpan other) {
    return Math.max(0, Math.max(one.startS() - other.endS(), other.startS() - one.endS()));
  }

  private static boolean isFree(Route route, OperationSpan span) {
    return route.operation(span.operationId()).condition() == SpindleCondition.TURNING_ANY;
  }
}
