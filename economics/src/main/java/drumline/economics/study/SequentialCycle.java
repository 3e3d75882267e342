package drumline.economics.study;

import drumline.shop.machine.Machine;
import drumline.shop.machine.Machine.Kind;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import drumline.shop.operation.WorkEnd;

/**
 * Cycle of a lathe that does one operation after the other on each spindle: a first estimate for
 * comparison, not a time study.
 *
 * <p>T = max(Σ front (t + a), Σ back (t + a) + g) + f.
 *
 * <ul>
 *   <li>t cutting time at the fastest speed that operation and machine allow, s
 *   <li>a time to bring the next tool, s; f feed-out, s; g the second spindle's own handling, s
 *   <li>without a second spindle front and back operations add up
 * </ul>
 *
 * Source: derived. Known limit: two turrets cutting at once on one spindle are not counted, so a
 * machine with two is faster than this.
 */
public final class SequentialCycle {
  private SequentialCycle() {}

  /**
   * The cycle in seconds.
   *
   * @throws IllegalArgumentException if the machine has a spindle drum
   */
  public static double estimateS(Machine machine, Route route) {
    if (machine.kind() == Kind.DRUM) {
      throw new IllegalArgumentException(
          "machine: " + machine.name() + " has a drum, allowed: machines that work one by one");
    }
    double frontS = sumS(machine, route, true);
    double backS = sumS(machine, route, false);
    var pickUp = machine.pickUp();
    if (pickUp == null) {
      return frontS + backS + machine.barFeed().feedOutS();
    }
    double handlingS = pickUp.gripS() + pickUp.retractS() + pickUp.ejectS() + pickUp.returnS();
    return Math.max(frontS, backS + handlingS) + machine.barFeed().feedOutS();
  }

  private static double sumS(Machine machine, Route route, boolean front) {
    return route.operations().stream()
        .filter(operation -> (operation.end() != WorkEnd.BACK) == front)
        .mapToDouble(operation -> cutS(machine, operation) + machine.indexS())
        .sum();
  }

  private static double cutS(Machine machine, Operation operation) {
    double fastest =
        Math.min(operation.cut().highestRevPerMin(), machine.drive().highestRevPerMin());
    return operation.cut().cutS(fastest);
  }
}
