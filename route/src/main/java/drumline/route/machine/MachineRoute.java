package drumline.route.machine;

import drumline.route.rule.Allowances;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;

/** What a machine's spindles change in a route. */
public final class MachineRoute {
  private MachineRoute() {}

  /** The route with its speeds fitted to a machine. */
  public static Route adapt(Route route, Machine machine, Allowances allowances) {
    return SlowestSpeed.adapt(PartingSpeed.adapt(route, machine, allowances), machine);
  }
}
