package drumline.route.machine;

import drumline.cutting.clamping.SlipSafety;
import drumline.cutting.clamping.SlipSafety.Demand;
import drumline.shop.machine.Machine;
import drumline.shop.machine.Workholding;
import drumline.shop.material.Material;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Loads;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import drumline.shop.operation.WorkEnd;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Less feed for drills that would push the bar back through the collet, and says so.
 *
 * <p>Torque and thrust grow with f^(1 − mc), so the feed that the grip bears is f·(s/S)^(1/(1 −
 * mc)), with s the safety at the window's feed and S the safety asked for; a tenth of the grip is
 * left for what speed takes. Source: [BASIS] section 6 for the slip check; Kienzle's exponent for
 * the growth.
 */
final class DrillFeedForGrip {
  private static final double GRIP_LEFT_RATIO = 0.9;

  private DrillFeedForGrip() {}

  /** The route with drills fed as the collet bears. */
  static Route adapt(Route route, Machine machine, Material material, double gripDiameterMm) {
    List<Problem> problems = new ArrayList<>(route.problems());
    List<Operation> operations = new ArrayList<>();
    for (Operation operation : route.operations()) {
      boolean drill = operation.kind() == OperationKind.DRILL && operation.end() == WorkEnd.FRONT;
      double ratio = drill ? feedRatio(operation, machine, material, gripDiameterMm) : 1;
      if (ratio < 1) {
        problems.add(slower(operation, machine, ratio));
        operations.add(fed(operation, ratio, material.force().exponentRatio()));
      } else {
        operations.add(operation);
      }
    }
    return new Route(operations, route.orders(), route.pairs(), problems);
  }

  private static double feedRatio(
      Operation operation, Machine machine, Material material, double gripDiameterMm) {
    Workholding collet = machine.workholding();
    SlipSafety slip =
        new SlipSafety(GRIP_LEFT_RATIO * collet.gripN(), collet.frictionRatio(), gripDiameterMm);
    Loads loads = operation.loads();
    double safety = slip.safetyRatio(new Demand(loads.torqueNm(), loads.thrustN()));
    double ratio = safety / collet.safetyRatio();
    return ratio >= 1 ? 1 : Math.pow(ratio, 1 / (1 - material.force().exponentRatio()));
  }

  private static Operation fed(Operation operation, double ratio, double exponent) {
    CutSpec cut = operation.cut();
    double load = Math.pow(ratio, 1 - exponent);
    Loads loads = operation.loads();
    return operation
        .withCut(operation.id(), operation.title(), cut.withFeed(cut.feedMmPerRev() * ratio))
        .withLoads(
            new Loads(
                loads.cuttingForceN() * load,
                loads.thrustN() * load,
                loads.radialN() * load,
                loads.torqueNm() * load,
                loads.toolPowerKw(),
                loads.feedForceN() * load));
  }

  private static Problem slower(Operation operation, Machine machine, double ratio) {
    double feed = operation.cut().feedMmPerRev();
    return Problem.warning(
        "feed-for-grip",
        operation.id(),
        String.format(
            Locale.ROOT,
            "%.3f mm/rev would push the bar with %.0f N",
            feed,
            operation.loads().thrustN()),
        String.format(
            Locale.ROOT,
            "%.3f mm/rev by the collet's grip of %.0f N on %s, used here",
            feed * ratio,
            machine.workholding().gripN(),
            machine.name()),
        "Maybe drill smaller first, or use a collet with more grip.");
  }
}
