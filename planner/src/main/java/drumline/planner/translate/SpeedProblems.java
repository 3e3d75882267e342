package drumline.planner.translate;

import drumline.cycle.spindle.SpeedWindow;
import drumline.shop.machine.Machine;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.operation.Operation;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.problem.Problem;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What is wrong where no speed suits. */
final class SpeedProblems {
  private SpeedProblems() {}

  /** No speed, or no spindle and collet, for one operation. */
  static Problem noSpeed(Operation operation, Machine machine) {
    SpindleDrive drive = machine.drive();
    return Problem.error(
        "no-speed",
        "operation " + operation.id(),
        String.format(
            Locale.ROOT,
            "%s at %.0f to %.0f rev/min with %.1f Nm and %.0f N",
            operation.title(),
            operation.cut().lowestRevPerMin(),
            operation.cut().highestRevPerMin(),
            operation.loads().torqueNm(),
            operation.loads().thrustN()),
        String.format(
            Locale.ROOT,
            "%.0f to %.0f rev/min of %s, %.1f Nm, %.1f kW, and its collet's grip",
            drive.lowestRevPerMin(),
            drive.highestRevPerMin(),
            machine.name(),
            drive.torqueNm(),
            drive.powerKw()),
        "Maybe less feed or depth of cut, or a larger machine.");
  }

  /**
   * No speed for all turning on a machine with one common speed.
   *
   * @param operations operations that must be done at the drum
   * @param windows speeds by operation id
   */
  static Optional<Problem> findNoCommonSpeed(
      List<Operation> operations, Map<String, SpeedWindow> windows, Machine machine) {
    double lowest = 0;
    double highest = Double.POSITIVE_INFINITY;
    for (Operation operation : operations) {
      SpeedWindow window = windows.get(operation.id());
      if (window != null && operation.condition() == SpindleCondition.TURNING) {
        lowest = Math.max(lowest, window.lowestRevPerMin());
        highest = Math.min(highest, window.highestRevPerMin());
      }
    }
    return lowest <= highest
        ? Optional.empty()
        : Optional.of(
            Problem.error(
                "no-common-speed",
                machine.name(),
                String.format(
                    Locale.ROOT,
                    "operations that need %.0f rev/min at least and others %.0f at most",
                    lowest,
                    highest),
                "one speed for all turning at the drum",
                "Maybe a machine with independent spindles."));
  }
}
