package drumline.planner.check;

import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.timeline.Timeline;
import drumline.shop.machine.Machine;
import drumline.shop.machine.PickUp;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/**
 * Everything an audit looks at.
 *
 * @param route operations and rules
 * @param machine machine
 * @param diameters what the collets grip on
 * @param timeline the clock's answer
 * @param spots operations with place and time, in the route's order
 */
record Floor(
    Route route, Machine machine, GripDiameters diameters, Timeline timeline, List<Spot> spots) {

  Spot spot(String operationId) {
    return spots.stream().filter(s -> s.id().equals(operationId)).findFirst().orElseThrow();
  }

  Optional<Spot> cutOff() {
    return spots.stream().filter(s -> s.operation().kind() == OperationKind.CUT_OFF).findFirst();
  }

  boolean isBack(Spot spot) {
    return spot.position() > machine.positions().size();
  }

  /** The pick-up spindle; only asked for with spots that stand there. */
  PickUp pickUp() {
    PickUp pickUp = machine.pickUp();
    if (pickUp == null) {
      throw new IllegalArgumentException("machine has no pick-up spindle");
    }
    return pickUp;
  }

  double runUpRevPerMinPerS(Spot spot) {
    return isBack(spot) ? pickUp().runUpRevPerMinPerS() : machine.drive().runUpRevPerMinPerS();
  }

  double orientS(Spot spot) {
    return isBack(spot) ? pickUp().orientS() : machine.drive().orientS();
  }

  /** When the piece is parted, on the pick-up spindle's clock. */
  double partedS() {
    return pickUp().gripS()
        + cutOff().map(cut -> cut.span().endS() - cut.span().startS()).orElse(0.0);
  }

  /** Breaches that a rule finds in pairs at one spindle; the first does not start later. */
  List<String> inPairs(BiFunction<Spot, Spot, Optional<String>> rule) {
    List<String> broken = new ArrayList<>();
    for (Spot one : spots) {
      for (Spot other : spots) {
        boolean isFirst =
            one.span().startS() < other.span().startS()
                || (one.span().startS() == other.span().startS()
                    && one.id().compareTo(other.id()) < 0);
        if (one.position() == other.position() && isFirst) {
          rule.apply(one, other).ifPresent(broken::add);
        }
      }
    }
    return broken;
  }

  /** Positions with the pick-up spindle's. */
  IntStream positions() {
    return IntStream.rangeClosed(1, machine.positions().size() + 1);
  }

  List<Spot> at(int position) {
    return spots.stream().filter(s -> s.position() == position).toList();
  }

  static String say(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
