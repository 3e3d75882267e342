package drumline.shop.machine;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A drum that goes on by two positions: two pieces at each index, each through half the positions,
 * with every tool twice. Written as a machine of half the positions, each of which stands for two
 * neighbours and can do what both can.
 *
 * <p>Source: [BASIS] 7.3 (two independent streams, tools doubled). Known limits: tools that stop
 * the machine are counted once for both streams' pieces and twice in their changes' share;
 * back-working needs one pick-up spindle for each stream.
 */
public final class DoubleIndexing {
  private DoubleIndexing() {}

  /**
   * The machine with double indexing; empty if its drum cannot, or has an odd number of positions.
   */
  public static Optional<Machine> of(Machine machine) {
    int count = machine.positions().size();
    if (machine.indexing().doubleIndexS() <= 0
        || machine.indexing().piecesPerIndexCount() == 2
        || count % 2 == 1) {
      return Optional.empty();
    }
    List<Position> pairs = new ArrayList<>();
    for (int k = 0; k < count; k += 2) {
      pairs.add(
          new Position(
              k / 2 + 1,
              both(machine.positions().get(k).slides(), machine.positions().get(k + 1).slides())));
    }
    return Optional.of(
        new Machine(
            machine.name() + "-double",
            machine.title() + "; double indexing, two pieces at each index",
            machine.kind(),
            pairs,
            machine.drive(),
            machine.workholding(),
            pickUp(machine.pickUp()),
            machine.barFeed(),
            machine.indexing().doubleIndexS(),
            machine.maxPieceLengthMm(),
            cost(machine.cost()),
            machine.source(),
            new Indexing(2, machine.indexing().doubleIndexS())));
  }

  /** Slides of two neighbours, matched by kind in their order. */
  private static List<ToolSlide> both(List<ToolSlide> one, List<ToolSlide> other) {
    List<ToolSlide> free = new ArrayList<>(other);
    List<ToolSlide> pairs = new ArrayList<>();
    for (ToolSlide slide : one) {
      Optional<ToolSlide> match = free.stream().filter(s -> s.kind() == slide.kind()).findFirst();
      match.ifPresent(
          found -> {
            free.remove(found);
            pairs.add(common(slide, found));
          });
    }
    return pairs;
  }

  private static ToolSlide common(ToolSlide one, ToolSlide other) {
    Set<Axis> axes = EnumSet.noneOf(Axis.class);
    axes.addAll(one.axes());
    axes.retainAll(other.axes());
    Map<Equipment, Fitting> equipment = new EnumMap<>(Equipment.class);
    for (Equipment kind : Equipment.values()) {
      if (one.canHave(kind) && other.canHave(kind)) {
        boolean fitted =
            one.equipment().get(kind) == Fitting.FITTED
                && other.equipment().get(kind) == Fitting.FITTED;
        equipment.put(kind, fitted ? Fitting.FITTED : Fitting.OPTION);
      }
    }
    return new ToolSlide(
        one.id() + "+" + other.id(),
        one.kind(),
        axes,
        Math.min(one.strokeMm(), other.strokeMm()),
        Math.min(one.rapidMPerMin(), other.rapidMPerMin()),
        Math.min(one.accelerationMPerS2(), other.accelerationMPerS2()),
        Math.min(one.thrustN(), other.thrustN()),
        Math.min(one.seatCount(), other.seatCount()),
        Math.max(one.toolShiftS(), other.toolShiftS()),
        equipment);
  }

  /** Two pick-up spindles serve one stream each; one alone can serve none. */
  private static @org.jspecify.annotations.Nullable PickUp pickUp(
      @org.jspecify.annotations.Nullable PickUp pickUp) {
    if (pickUp == null || pickUp.spindleCount() < 2 || pickUp.slides().size() < 2) {
      return null;
    }
    int half = pickUp.slides().size() / 2;
    return new PickUp(
        1,
        pickUp.highestRevPerMin(),
        pickUp.powerKw(),
        pickUp.torqueNm(),
        pickUp.gripN(),
        pickUp.gripS(),
        pickUp.retractS(),
        pickUp.ejectS(),
        pickUp.returnS(),
        pickUp.runUpRevPerMinPerS(),
        pickUp.orientS(),
        both(pickUp.slides().subList(0, half), pickUp.slides().subList(half, 2 * half)));
  }

  private static MachineCost cost(MachineCost cost) {
    Map<Equipment, BigDecimal> prices = new HashMap<>();
    cost.optionPrices().forEach((kind, price) -> prices.put(kind, price.add(price)));
    Map<Equipment, Integer> limits = new HashMap<>();
    cost.mostOptionsCount().forEach((kind, most) -> limits.put(kind, most / 2));
    return new MachineCost(
        cost.currency(),
        cost.price(),
        prices,
        limits,
        cost.hourRate(),
        cost.setUpH(),
        cost.machinesPerOperatorCount(),
        cost.availabilityPct());
  }
}
