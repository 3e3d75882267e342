package drumline.route.machine;

import drumline.route.rule.Allowances;
import drumline.shop.machine.Machine;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import java.util.Locale;

/**
 * Speeds of turning work on a drum, limited so that every edge lasts a while: a worn edge stops all
 * spindles, so that the speeds of a machine with one tool in cut are too fast here.
 *
 * <p>v ≤ C / T^n, with Taylor's constants of the window and T the life asked for in min; never
 * below the window. Source: [PMPA18] slightly slower cutting can raise up-time; [BASIS] sections 4
 * and 7.3 show how much changes cost at full speed; the life asked for is from memory.
 */
final class DrumLife {
  private DrumLife() {}

  /** The route for a machine: slower where edges would not last, on drums only. */
  static Route adapt(Route route, Machine machine, Allowances allowances) {
    if (machine.kind() != Machine.Kind.DRUM) {
      return route;
    }
    double lifeMin = allowances.value("drumLife");
    return new Route(
        route.operations().stream().map(operation -> lasting(operation, lifeMin)).toList(),
        route.orders(),
        route.pairs(),
        route.problems());
  }

  private static Operation lasting(Operation operation, double lifeMin) {
    CutSpec cut = operation.cut();
    if (operation.condition() != SpindleCondition.TURNING || cut.cuttingDiameterMm() <= 0) {
      return operation;
    }
    double speed = cut.life().constantMPerMin() / Math.pow(lifeMin, cut.life().exponentRatio());
    double wanted = 1000 * speed / (Math.PI * cut.cuttingDiameterMm());
    double highest = Math.max(wanted, cut.lowestRevPerMin());
    return highest >= cut.highestRevPerMin()
        ? operation
        : operation.withCut(
            operation.id(),
            operation.title(),
            cut.withHighest(
                highest, String.format(Locale.ROOT, "%.0f min of tool life on a drum", lifeMin)));
  }
}
