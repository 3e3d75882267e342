package drumline.route.machine;

import drumline.shop.machine.Machine;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.SpindleDrive.Coupling;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Lets operations run slower than their cutting window where the machine leaves no choice: small
 * diameters at the spindle's fastest speed, and tools that share one common speed with all others.
 * What runs below its window for want of spindle speed is said.
 */
final class SlowestSpeed {
  /** Below the top speed by so much an operation may still agree with others; common practice. */
  private static final double ROOM_RATIO = 0.8;

  /** How far below its window a tool may run at a common speed; from memory, as on cam machines. */
  private static final double COMMON_RATIO = 0.4;

  private SlowestSpeed() {}

  /** The route for a machine. */
  static Route adapt(Route route, Machine machine) {
    List<Problem> problems = new ArrayList<>(route.problems());
    List<Operation> operations = new ArrayList<>();
    for (Operation operation : route.operations()) {
      operations.add(
          operation.condition() == SpindleCondition.TURNING
              ? adapted(operation, machine, problems)
              : operation);
    }
    return new Route(operations, route.orders(), route.pairs(), problems);
  }

  private static Operation adapted(Operation operation, Machine machine, List<Problem> problems) {
    CutSpec cut = operation.cut();
    double top = topRevPerMin(operation, machine);
    double lowest = cut.lowestRevPerMin();
    if (lowest > top) {
      problems.add(tooSlow(operation, machine, top));
      lowest = ROOM_RATIO * top;
    }
    if (machine.drive().coupling() == Coupling.COMMON && operation.end() != WorkEnd.BACK) {
      lowest *= COMMON_RATIO;
    }
    return lowest == cut.lowestRevPerMin()
        ? operation
        : operation.withCut(operation.id(), operation.title(), cut.withLowest(lowest));
  }

  private static double topRevPerMin(Operation operation, Machine machine) {
    PickUp pickUp = machine.pickUp();
    return operation.end() == WorkEnd.BACK && pickUp != null
        ? pickUp.highestRevPerMin()
        : machine.drive().highestRevPerMin();
  }

  private static Problem tooSlow(Operation operation, Machine machine, double top) {
    return Problem.warning(
        "below-window",
        operation.id(),
        String.format(
            Locale.ROOT,
            "%.0f m/min at the %.0f rev/min of %s",
            operation.cut().cuttingSpeedMPerMin(top),
            top,
            machine.name()),
        String.format(
            Locale.ROOT,
            "%.0f m/min and more",
            operation.cut().cuttingSpeedMPerMin(operation.cut().lowestRevPerMin())),
        "Maybe a sharper or uncoated tool cuts well enough there; prove the finish.");
  }
}
