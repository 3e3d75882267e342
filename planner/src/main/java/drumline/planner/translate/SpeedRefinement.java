package drumline.planner.translate;

import drumline.cycle.clock.CycleClock;
import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.spindle.SpeedWindow;
import drumline.cycle.spindle.SpindleShares;
import drumline.cycle.spindle.WorkSpindle;
import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.Timeline;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Takes the last out of spindle speeds once places are fixed: in the position that sets the cycle,
 * each group of operations that turn at one speed is tried at the least of their fastest speeds, at
 * the speed where their loads together fill the spindle or collet, and, where a change of speed
 * costs more than the cut gains, at a slower one; what shortens the position is kept.
 *
 * <p>Slower: as {@link ShortCut} for the longest cut of the group.
 */
public final class SpeedRefinement {
  private static final int MOST_ROUNDS = 60;
  private static final double LEAST_GAIN_S = 1e-6;

  private final Route route;
  private final Machine machine;
  private final CycleClock clock;
  private final WorkSpindle drum;
  private final GripDiameters diameters;

  private SpeedRefinement(Route route, Machine machine, GripDiameters diameters) {
    this.route = route;
    this.machine = machine;
    this.diameters = diameters;
    clock = new CycleClock(route, machine, diameters);
    drum = WorkSpindle.ofDrum(machine, diameters);
  }

  /**
   * The layout with speeds that make its cycle shorter, or the same layout.
   *
   * @param pinnedIds operations whose speed the user has fixed; their groups are left alone
   * @throws IllegalArgumentException if the layout cannot be put on the clock
   */
  public static Layout refine(
      Route route, Machine machine, GripDiameters diameters, Layout layout, Set<String> pinnedIds) {
    SpeedRefinement refinement = new SpeedRefinement(route, machine, diameters);
    Layout best = layout;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Layout better = refinement.better(best, pinnedIds);
      if (better.equals(best)) {
        return best;
      }
      best = better;
    }
    return best;
  }

  private Layout better(Layout layout, Set<String> pinnedIds) {
    Timeline timeline = clock.timeline(layout);
    for (List<OperationSpan> group : groups(timeline)) {
      if (group.stream().anyMatch(span -> pinnedIds.contains(span.operationId()))) {
        continue;
      }
      Layout best = layout;
      Timeline bestTimeline = timeline;
      for (double n : candidates(group, isBack(timeline))) {
        Layout changed = withSpeed(layout, group, n);
        Timeline tried = clock.timeline(changed);
        if (isBetter(tried, bestTimeline, timeline.governing())) {
          best = changed;
          bestTimeline = tried;
        }
      }
      if (!best.equals(layout)) {
        return best;
      }
    }
    return layout;
  }

  private static boolean isBetter(Timeline tried, Timeline than, int position) {
    return tried.cycleS() <= than.cycleS() + LEAST_GAIN_S / 10
        && busyS(tried, position) < busyS(than, position) - LEAST_GAIN_S;
  }

  private static double busyS(Timeline timeline, int position) {
    return position(timeline, position).busyS();
  }

  private static PositionTimeline position(Timeline timeline, int position) {
    PositionTimeline back = timeline.back();
    return position > timeline.positions().size() && back != null
        ? back
        : timeline.positions().get(position - 1);
  }

  private boolean isBack(Timeline timeline) {
    return timeline.governing() > machine.lastPosition();
  }

  /** Groups of turning operations with one speed without another speed in between. */
  private List<List<OperationSpan>> groups(Timeline timeline) {
    boolean isCommon =
        machine.drive().coupling() == SpindleDrive.Coupling.COMMON && !isBack(timeline);
    List<OperationSpan> turning = new ArrayList<>();
    if (isCommon) {
      timeline.positions().forEach(p -> turning.addAll(p.operations()));
    } else {
      turning.addAll(position(timeline, timeline.governing()).operations());
    }
    turning.removeIf(
        span -> route.operation(span.operationId()).condition() != SpindleCondition.TURNING);
    List<List<OperationSpan>> groups = new ArrayList<>();
    for (OperationSpan span : turning) {
      List<OperationSpan> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
      if (last.isEmpty()
          || (!isCommon && last.get(0).spindleRevPerMin() != span.spindleRevPerMin())) {
        groups.add(new ArrayList<>());
      }
      groups.get(groups.size() - 1).add(span);
    }
    return groups;
  }

  private Set<Double> candidates(List<OperationSpan> group, boolean isBack) {
    WorkSpindle spindle = isBack ? WorkSpindle.ofPickUp(machine, diameters) : drum;
    double lowest = 0;
    double highest = Double.POSITIVE_INFINITY;
    double turnsCount = 0;
    for (OperationSpan span : group) {
      Operation operation = route.operation(span.operationId());
      SpeedWindow window = SpeedWindow.find(operation, spindle).orElse(null);
      if (window == null) {
        return Set.of();
      }
      lowest = Math.max(lowest, window.lowestRevPerMin());
      highest = Math.min(highest, window.highestRevPerMin());
      highest = Math.min(highest, matchedRevPerMin(operation));
      turnsCount = Math.max(turnsCount, operation.cut().revolutionsCount());
    }
    double leastRevPerMin = lowest;
    double mostRevPerMin = highest;
    Set<Double> speeds = new TreeSet<>();
    if (lowest <= highest && highest > 0) {
      speeds.add(highest);
      speeds.add(loaded(group, spindle, lowest, highest));
      PickUp pickUp = machine.pickUp();
      double reachS = isBack && pickUp != null ? pickUp.retractS() : machine.indexS();
      speeds.add(ShortCut.speedRevPerMin(turnsCount, spindle));
      speeds.add(reachS * spindle.runUpRevPerMinPerS());
      speeds.removeIf(n -> n < leastRevPerMin || n > mostRevPerMin);
    }
    return speeds;
  }

  private double matchedRevPerMin(Operation operation) {
    PickUp pickUp = machine.pickUp();
    return operation.kind() == OperationKind.CUT_OFF && pickUp != null
        ? pickUp.highestRevPerMin()
        : Double.POSITIVE_INFINITY;
  }

  /** Fastest speed at which all loads of the group together are borne, by halving. */
  private double loaded(
      List<OperationSpan> group, WorkSpindle spindle, double lowest, double highest) {
    double borne = lowest;
    double tooFast = highest;
    for (int k = 0; k < 40; k++) {
      double middle = (borne + tooFast) / 2;
      double torqueRatio = 0;
      double gripRatio = 0;
      for (OperationSpan span : group) {
        Operation operation = route.operation(span.operationId());
        torqueRatio += SpindleShares.torqueShareRatio(operation.loads(), spindle, middle);
        gripRatio += SpindleShares.gripShareRatio(operation.loads(), spindle, middle);
      }
      if (Math.max(torqueRatio, gripRatio) <= 1) {
        borne = middle;
      } else {
        tooFast = middle;
      }
    }
    return borne > 0 ? borne : highest;
  }

  private static Layout withSpeed(Layout layout, List<OperationSpan> group, double n) {
    Set<String> ids = new HashSet<>();
    group.forEach(span -> ids.add(span.operationId()));
    return new Layout(
        layout.machineName(),
        layout.placements().stream()
            .map(
                p ->
                    ids.contains(p.operationId())
                        ? new Placement(p.operationId(), p.slideId(), n, p.plannedStartS())
                        : p)
            .toList());
  }
}
