package drumline.route.machine;

import drumline.cutting.parting.CutOff;
import drumline.cutting.turning.SurfaceSpeed;
import drumline.route.rule.Allowances;
import drumline.shop.machine.Machine;
import drumline.shop.machine.SpindleDrive.Coupling;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import java.util.List;
import java.util.Locale;

/**
 * Parting at constant surface speed, where the spindle has a drive of its own and nothing else cuts
 * with it.
 *
 * <p>The cut keeps its revolutions; its speed becomes the constant one that takes the same time: n
 * = 60·revolutions / t, with t by {@link CutOff#timeS(SurfaceSpeed)}, and the cutting speed then
 * counts on the diameter d = 1000·v / (π·n). Known limit: the drive's acceleration is not counted.
 */
final class PartingSpeed {
  private PartingSpeed() {}

  /** The route for a machine: changed where its spindles turn independently, else the same. */
  static Route adapt(Route route, Machine machine, Allowances allowances) {
    if (machine.drive().coupling() != Coupling.INDEPENDENT) {
      return route;
    }
    List<Operation> operations =
        route.operations().stream()
            .map(o -> o.kind() == OperationKind.CUT_OFF ? parting(o, machine, allowances) : o)
            .toList();
    return new Route(operations, route.orders(), route.pairs(), route.problems());
  }

  private static Operation parting(Operation operation, Machine machine, Allowances allowances) {
    CutSpec cut = operation.cut();
    double outer = cut.cuttingDiameterMm();
    double speed = Math.PI * outer * cut.highestRevPerMin() / 1000;
    double top = topRevPerMin(machine);
    CutOff geometry =
        new CutOff(
            outer,
            Math.max(0, outer - 2 * cut.depthMm()),
            allowances.value("cutStart"),
            allowances.value("cutOffOverrun"),
            cut.feedMmPerRev(),
            cut.feedMmPerRev() * allowances.value("cutOffReduced"),
            Math.min(allowances.value("cutOffReduce"), outer));
    double time = geometry.timeS(SurfaceSpeed.clampedAt(speed, top));
    double mean = 60 * geometry.revolutionsCount() / time;
    if (mean <= cut.highestRevPerMin()) {
      return operation;
    }
    String limit =
        String.format(
            Locale.ROOT,
            "%.0f m/min kept while the diameter falls, %.0f rev/min at most",
            speed,
            top);
    double ratio = cut.highestRevPerMin() / mean;
    return operation.withCut(
        operation.id(),
        operation.title(),
        new CutSpec(
            cut.revolutionsCount(),
            cut.fixedS(),
            cut.dwellRevCount(),
            cut.lowestRevPerMin() / ratio,
            mean,
            limit,
            cut.toolRevPerMin(),
            outer * ratio,
            cut.feedMmPerRev(),
            cut.depthMm(),
            cut.passCount(),
            cut.travelMm(),
            cut.approachMm(),
            cut.life()));
  }

  private static double topRevPerMin(Machine machine) {
    var pickUp = machine.pickUp();
    double drum = machine.drive().highestRevPerMin();
    return pickUp == null ? drum : Math.min(drum, pickUp.highestRevPerMin());
  }
}
