package drumline.app.range;

import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.spindle.SpeedWindow;
import drumline.cycle.spindle.WorkSpindle;
import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.Timeline;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.SpindleDrive.Coupling;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Spindle speeds of a layout moved with their windows: operations that turn together keep one
 * speed, at the least of the ratios by which their fastest speeds moved, within every one's window,
 * as long as the windows meet.
 *
 * @param was route that the layout was planned for
 * @param now the same operations with moved windows
 * @param machine the machine
 * @param drum its spindles
 * @param pinned operations whose speed the user has fixed
 */
public record MovedSpeeds(
    Route was, Route now, Machine machine, WorkSpindle drum, Set<String> pinned) {

  static MovedSpeeds of(
      Route was, Route now, Machine machine, GripDiameters diameters, Set<String> pinned) {
    return new MovedSpeeds(was, now, machine, WorkSpindle.ofDrum(machine, diameters), pinned);
  }

  Layout move(Layout layout, Timeline timeline) {
    Map<String, Double> speeds = new HashMap<>();
    boolean common = machine.drive().coupling() == Coupling.COMMON;
    for (PositionTimeline position : RangeRun.all(timeline)) {
      boolean back = position.equals(timeline.back());
      List<OperationSpan> turning =
          (common && !back ? RangeRun.spans(timeline) : position.operations())
              .stream().filter(this::turns).toList();
      for (OperationSpan span : position.operations()) {
        if (turns(span)) {
          List<OperationSpan> group =
              turning.stream()
                  .filter(other -> other.spindleRevPerMin() == span.spindleRevPerMin())
                  .toList();
          speeds.put(span.operationId(), moved(span, group));
        }
      }
    }
    return new Layout(
        layout.machineName(), layout.placements().stream().map(p -> at(p, speeds)).toList());
  }

  private static Placement at(Placement placement, Map<String, Double> speeds) {
    return new Placement(
        placement.operationId(),
        placement.slideId(),
        speeds.getOrDefault(placement.operationId(), placement.spindleRevPerMin()),
        placement.plannedStartS());
  }

  private boolean turns(OperationSpan span) {
    return now.operation(span.operationId()).condition() == SpindleCondition.TURNING;
  }

  /** One speed for the group, or the operation's own where the moved windows no longer meet. */
  private double moved(OperationSpan one, List<OperationSpan> group) {
    if (group.stream().anyMatch(span -> pinned.contains(span.operationId()))) {
      return one.spindleRevPerMin();
    }
    double ratio = Double.POSITIVE_INFINITY;
    double lowest = 0;
    double highest = Double.POSITIVE_INFINITY;
    for (OperationSpan span : group) {
      Operation before = was.operation(span.operationId());
      Operation after = now.operation(span.operationId());
      ratio = Math.min(ratio, after.cut().highestRevPerMin() / before.cut().highestRevPerMin());
      lowest = Math.max(lowest, after.cut().lowestRevPerMin());
      highest = Math.min(highest, fastest(after));
    }
    double wanted = one.spindleRevPerMin() * ratio;
    Operation own = now.operation(one.operationId());
    return lowest <= highest
        ? Math.max(lowest, Math.min(highest, wanted))
        : Math.max(own.cut().lowestRevPerMin(), Math.min(fastest(own), wanted));
  }

  private double fastest(Operation operation) {
    PickUp pickUp = machine.pickUp();
    double matched =
        operation.kind() == OperationKind.CUT_OFF && pickUp != null
            ? pickUp.highestRevPerMin()
            : Double.POSITIVE_INFINITY;
    double window =
        SpeedWindow.find(operation, drum)
            .map(SpeedWindow::highestRevPerMin)
            .orElse(operation.cut().highestRevPerMin());
    return Math.min(window, matched);
  }
}
