package drumline.cycle.spindle;

import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.machine.ToolSlide;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.problem.Problem;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The rule of machines whose spindles are geared together: one speed for all turning. */
public final class CommonSpeed {
  private CommonSpeed() {}

  /**
   * What is wrong with the layout's speeds on a machine with one common speed; empty on machines
   * with independent spindles, or if all turning at the drum has one speed.
   */
  public static Optional<Problem> findBreach(Route route, Machine machine, Layout layout) {
    if (machine.drive().coupling() != SpindleDrive.Coupling.COMMON) {
      return Optional.empty();
    }
    Set<String> drumSlides = machine.drumSlides().map(ToolSlide::id).collect(Collectors.toSet());
    Map<Double, Set<String>> operationsBySpeed = new TreeMap<>();
    for (Placement placement : layout.placements()) {
      Optional<Operation> operation = route.findOperation(placement.operationId());
      if (operation.isPresent()
          && operation.get().condition() == SpindleCondition.TURNING
          && drumSlides.contains(placement.slideId())) {
        operationsBySpeed
            .computeIfAbsent(placement.spindleRevPerMin(), n -> new TreeSet<>())
            .add(placement.operationId());
      }
    }
    return operationsBySpeed.size() <= 1
        ? Optional.empty()
        : Optional.of(
            Problem.error(
                "common-speed",
                machine.name(),
                "speeds in rev/min with their operations: " + operationsBySpeed,
                "one speed for all turning at the drum",
                "Maybe the least of them: " + operationsBySpeed.keySet().iterator().next() + "."));
  }
}
