package drumline.planner.slack;

import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import java.util.ArrayList;
import java.util.List;

/**
 * Operations of one position that turn at one speed, with no other speed in between.
 *
 * @param operationIds the operations, by start
 * @param revPerMin their speed
 */
record SpeedGroup(List<String> operationIds, double revPerMin) {

  /** Copies the list. */
  SpeedGroup {
    operationIds = List.copyOf(operationIds);
  }

  /** The groups of a position, by start. */
  static List<SpeedGroup> of(Route route, PositionTimeline position) {
    List<SpeedGroup> groups = new ArrayList<>();
    for (OperationSpan span : position.operations()) {
      if (route.operation(span.operationId()).condition() != SpindleCondition.TURNING) {
        continue;
      }
      SpeedGroup last = groups.isEmpty() ? null : groups.get(groups.size() - 1);
      if (last != null && last.revPerMin == span.spindleRevPerMin()) {
        groups.set(groups.size() - 1, last.with(span.operationId()));
      } else {
        groups.add(new SpeedGroup(List.of(span.operationId()), span.spindleRevPerMin()));
      }
    }
    return groups;
  }

  private SpeedGroup with(String operationId) {
    List<String> ids = new ArrayList<>(operationIds);
    ids.add(operationId);
    return new SpeedGroup(ids, revPerMin);
  }

  /** The layout with this group at another speed. */
  Layout at(Layout layout, double newRevPerMin) {
    return new Layout(
        layout.machineName(),
        layout.placements().stream()
            .map(
                p ->
                    operationIds.contains(p.operationId())
                        ? new Placement(
                            p.operationId(), p.slideId(), newRevPerMin, p.plannedStartS())
                        : p)
            .toList());
  }
}
