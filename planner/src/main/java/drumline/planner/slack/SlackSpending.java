package drumline.planner.slack;

import drumline.cycle.clock.CycleClock;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.Timeline;
import drumline.shop.layout.Layout;
import drumline.shop.machine.Machine;
import drumline.shop.machine.SpindleDrive.Coupling;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleBiFunction;

/**
 * Turns the time that positions have left into tool life, with the cycle fixed: groups of
 * operations that turn at one speed are slowed in small steps, the step with the greatest saving of
 * tool cost first, until the position sets the cycle or the windows end.
 *
 * <p>Source: the rule that operations beside the bottleneck are slowed to the cycle is [HITOMI]
 * (abstract). Driven tools are {@link DrivenTools}' part. On machines with one common speed all
 * turning at the drum is one group, so that nothing is slowed at the shortest cycle.
 */
public final class SlackSpending {
  private static final double STEP_RATIO = 0.95;
  private static final double ROUNDING_S = 1e-6;

  private final Route route;
  private final Machine machine;
  private final CycleClock clock;
  private final ToDoubleBiFunction<Operation, Double> toolCost;
  private final Set<String> pinnedIds;
  private final double cycleS;

  private SlackSpending(
      Route route,
      Machine machine,
      CycleClock clock,
      ToDoubleBiFunction<Operation, Double> toolCost,
      Set<String> pinnedIds,
      double cycleS) {
    this.route = route;
    this.machine = machine;
    this.clock = clock;
    this.toolCost = toolCost;
    this.pinnedIds = Set.copyOf(pinnedIds);
    this.cycleS = cycleS;
  }

  /**
   * The layout with slower speeds where they cost no time.
   *
   * @param toolCost cost of edges and their changes for one piece, by operation and spindle speed
   *     in rev/min; any currency
   * @param pinnedIds operations whose speed the user has fixed; their groups are left alone
   * @throws IllegalArgumentException if the layout cannot be put on the clock
   */
  public static Layout spend(
      Route route,
      Machine machine,
      CycleClock clock,
      Layout layout,
      ToDoubleBiFunction<Operation, Double> toolCost,
      Set<String> pinnedIds) {
    return spend(
        route, machine, clock, layout, toolCost, pinnedIds, clock.timeline(layout).cycleS());
  }

  /**
   * The layout with slower speeds where they cost no more time than a cycle allows, which may be
   * longer than the layout's own.
   *
   * @param toolCost cost of edges and their changes for one piece, by operation and spindle speed
   *     in rev/min; any currency
   * @param pinnedIds operations whose speed the user has fixed; their groups are left alone
   * @param cycleS cycle that must not be exceeded
   * @throws IllegalArgumentException if the layout cannot be put on the clock
   */
  public static Layout spend(
      Route route,
      Machine machine,
      CycleClock clock,
      Layout layout,
      ToDoubleBiFunction<Operation, Double> toolCost,
      Set<String> pinnedIds,
      double cycleS) {
    SlackSpending spending = new SlackSpending(route, machine, clock, toolCost, pinnedIds, cycleS);
    Layout result = layout;
    for (int position = 1; position <= machine.lastPosition() + 1; position++) {
      result = spending.slow(result, position);
    }
    return result;
  }

  private Layout slow(Layout layout, int position) {
    Layout current = layout;
    Set<Set<String>> stuck = new HashSet<>();
    while (true) {
      Optional<Step> step = best(current, position, stuck);
      if (step.isEmpty()) {
        return current;
      }
      current = step.get().layout();
    }
  }

  private record Step(Layout layout, double saving) {}

  /** The step of one group that saves most, among those that leave the cycle as it is. */
  private Optional<Step> best(Layout layout, int position, Set<Set<String>> stuck) {
    Step best = null;
    for (SpeedGroup group : groups(layout, position)) {
      Set<String> key = Set.copyOf(group.operationIds());
      if (stuck.contains(key)) {
        continue;
      }
      double slower = group.revPerMin() * STEP_RATIO;
      double saving = saving(group, slower);
      Layout tried = group.at(layout, slower);
      if (slower < lowest(group) || saving <= 0 || !keepsCycle(tried)) {
        stuck.add(key);
      } else if (best == null || saving > best.saving()) {
        best = new Step(tried, saving);
      }
    }
    return Optional.ofNullable(best);
  }

  private List<SpeedGroup> groups(Layout layout, int position) {
    Timeline timeline = clock.timeline(layout);
    PositionTimeline back = timeline.back();
    if (position > machine.lastPosition()) {
      return back == null ? List.of() : free(SpeedGroup.of(route, back));
    }
    if (machine.drive().coupling() == Coupling.COMMON) {
      return position == 1 ? free(allTurning(timeline)) : List.of();
    }
    return free(SpeedGroup.of(route, timeline.positions().get(position - 1)));
  }

  /** All turning at the drum as one group, the cut-off included. */
  private List<SpeedGroup> allTurning(Timeline timeline) {
    List<String> ids = new ArrayList<>();
    double revPerMin = 0;
    for (PositionTimeline one : timeline.positions()) {
      for (SpeedGroup group : SpeedGroup.of(route, one)) {
        ids.addAll(group.operationIds());
        revPerMin = group.revPerMin();
      }
    }
    return ids.isEmpty() ? List.of() : List.of(new SpeedGroup(ids, revPerMin));
  }

  private List<SpeedGroup> free(List<SpeedGroup> groups) {
    return groups.stream()
        .filter(group -> group.operationIds().stream().noneMatch(pinnedIds::contains))
        .filter(
            group ->
                machine.drive().coupling() == Coupling.COMMON
                    || group.operationIds().stream().noneMatch(this::isParting))
        .toList();
  }

  /** Parting is left fast: it delays the pick-up spindle too. */
  private boolean isParting(String operationId) {
    return route.operation(operationId).kind() == OperationKind.CUT_OFF;
  }

  private double lowest(SpeedGroup group) {
    return Math.max(
        machine.drive().lowestRevPerMin(),
        group.operationIds().stream()
            .mapToDouble(id -> route.operation(id).cut().lowestRevPerMin())
            .max()
            .orElse(0));
  }

  private double saving(SpeedGroup group, double slower) {
    double saved = 0;
    for (String id : group.operationIds()) {
      Operation operation = route.operation(id);
      saved +=
          toolCost.applyAsDouble(operation, group.revPerMin())
              - toolCost.applyAsDouble(operation, slower);
    }
    return saved;
  }

  private boolean keepsCycle(Layout tried) {
    return clock.timeline(tried).cycleS() <= cycleS + ROUNDING_S;
  }
}
