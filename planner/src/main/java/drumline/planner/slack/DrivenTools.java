package drumline.planner.slack;

import drumline.cycle.clock.CycleClock;
import drumline.cycle.spindle.GripDiameters;
import drumline.shop.layout.Layout;
import drumline.shop.machine.Machine;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleBiFunction;

/**
 * Turns the time that positions have left into life of driven tools: each is slowed in small steps
 * while its edges get cheaper and the cycle stays as it is, the one whose edges cost most first.
 *
 * <p>Source: as of {@link SlackSpending}; the lowest share of the planned speed is from memory.
 * Known limits: tools that must keep their turns to the spindle's or the thread's pitch keep their
 * speed.
 */
public final class DrivenTools {
  private static final double STEP_RATIO = 0.95;
  private static final double LOWEST_RATIO = 0.6;
  private static final double ROUNDING_S = 1e-6;
  private static final Set<OperationKind> SLOWED =
      EnumSet.of(
          OperationKind.CROSS_DRILL,
          OperationKind.FACE_DRILL,
          OperationKind.MILL_FLATS,
          OperationKind.MILL_SLOT,
          OperationKind.ENGRAVE);

  private DrivenTools() {}

  /**
   * The route with slower driven tools where they cost no time.
   *
   * @param layout places and speeds, which stay
   * @param toolCost cost of edges and their changes for one piece, by operation and spindle speed
   *     in rev/min; any currency
   * @param pinnedIds operations whose speed the user has fixed
   * @param cycleS cycle that must not be exceeded
   */
  public static Route slow(
      Route route,
      Machine machine,
      GripDiameters diameters,
      Layout layout,
      ToDoubleBiFunction<Operation, Double> toolCost,
      Set<String> pinnedIds,
      double cycleS) {
    List<Operation> driven =
        route.operations().stream()
            .filter(o -> o.cut().toolRevPerMin() > 0 && SLOWED.contains(o.kind()))
            .filter(o -> !pinnedIds.contains(o.id()))
            .sorted((a, b) -> Double.compare(cost(toolCost, b), cost(toolCost, a)))
            .toList();
    Route current = route;
    for (Operation operation : driven) {
      double lowest = operation.cut().toolRevPerMin() * LOWEST_RATIO;
      Operation now = operation;
      while (now.cut().toolRevPerMin() * STEP_RATIO >= lowest) {
        Operation slower = at(now, now.cut().toolRevPerMin() * STEP_RATIO);
        Route tried = with(current, slower);
        boolean keeps =
            new CycleClock(tried, machine, diameters).timeline(layout).cycleS()
                <= cycleS + ROUNDING_S;
        if (!keeps || cost(toolCost, slower) >= cost(toolCost, now)) {
          break;
        }
        now = slower;
        current = tried;
      }
    }
    return current;
  }

  private static double cost(ToDoubleBiFunction<Operation, Double> toolCost, Operation operation) {
    return toolCost.applyAsDouble(operation, 0.0);
  }

  private static Operation at(Operation operation, double toolRevPerMin) {
    CutSpec cut = operation.cut().withToolSpeed(toolRevPerMin);
    return operation.withCut(operation.id(), operation.title(), cut);
  }

  private static Route with(Route route, Operation changed) {
    return new Route(
        route.operations().stream().map(o -> o.id().equals(changed.id()) ? changed : o).toList(),
        route.orders(),
        route.pairs(),
        route.problems());
  }
}
