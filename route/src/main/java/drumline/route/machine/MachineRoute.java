package drumline.route.machine;

import drumline.route.rule.Allowances;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;

/** What a machine's spindles and collets change in a route. */
public final class MachineRoute {
  private MachineRoute() {}

  /** The route of an inquiry with speeds, drilling feeds and ends of work fitted to a machine. */
  public static Route adapt(Route route, Machine machine, Inquiry inquiry, Allowances allowances) {
    Route fed = DrillFeedForGrip.adapt(route, machine, inquiry.material(), inquiry.bar().sizeMm());
    Route timed =
        SlowestSpeed.adapt(
            PartingSpeed.adapt(DrumLife.adapt(fed, machine, allowances), machine, allowances),
            machine);
    return SharedEnds.adapt(timed, machine, inquiry.part());
  }
}
