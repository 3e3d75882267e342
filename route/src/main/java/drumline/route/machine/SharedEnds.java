package drumline.route.machine;

import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.Deburring;
import drumline.shop.feature.Engraving;
import drumline.shop.feature.Feature;
import drumline.shop.feature.Flats;
import drumline.shop.feature.Groove;
import drumline.shop.feature.Knurl;
import drumline.shop.feature.MilledSlot;
import drumline.shop.feature.ScrewThread;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.Route;
import drumline.shop.operation.WorkEnd;
import drumline.shop.part.Part;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Work that a machine with one main spindle shares between both its spindles: outside work that
 * lies wholly behind the grip of the second spindle can be done there as well, while the next piece
 * is under way at the main spindle. A drum has its positions for that.
 *
 * <p>The second spindle grips on the longest cylinder of the outside, from its front end, over half
 * its diameter or all of it where it is shorter: common practice. Roughing stays at the bar, where
 * the grip is firmer and the cut-off becomes shorter.
 */
final class SharedEnds {
  private static final double GRIP_PER_DIAMETER_RATIO = 0.5;

  private final Part part;
  private final double gripEndMm;

  private SharedEnds(Part part, double gripEndMm) {
    this.part = part;
    this.gripEndMm = gripEndMm;
  }

  /** The route for a machine. */
  static Route adapt(Route route, Machine machine, Part part) {
    boolean hasTwoSpindles =
        machine.pickUp() != null
            && (machine.kind() == Machine.Kind.TWIN_SPINDLE
                || machine.kind() == Machine.Kind.SLIDING_HEAD);
    if (!hasTwoSpindles) {
      return route;
    }
    return part.findLongestCylinder()
        .map(step -> new SharedEnds(part, gripEndMm(step)).share(route))
        .orElse(route);
  }

  private static double gripEndMm(OutsideStep step) {
    return Math.min(
        step.toZMm(), step.fromZMm() + GRIP_PER_DIAMETER_RATIO * step.largestDiameterMm());
  }

  private Route share(Route route) {
    List<Operation> operations =
        route.operations().stream()
            .map(o -> isBehindGrip(o) ? o.withEnd(WorkEnd.EITHER) : o)
            .toList();
    Set<String> shared =
        operations.stream()
            .filter(o -> o.end() == WorkEnd.EITHER)
            .map(Operation::id)
            .collect(Collectors.toUnmodifiableSet());
    Set<String> cutOffs =
        operations.stream()
            .filter(o -> o.kind() == OperationKind.CUT_OFF)
            .map(Operation::id)
            .collect(Collectors.toUnmodifiableSet());
    List<OrderRule> orders =
        route.orders().stream()
            .filter(r -> !(shared.contains(r.beforeId()) && cutOffs.contains(r.afterId())))
            .toList();
    return new Route(operations, orders, route.pairs(), route.problems());
  }

  private boolean isBehindGrip(Operation operation) {
    return operation.end() == WorkEnd.FRONT
        && operation.kind() != OperationKind.CUT_OFF
        && operation.kind() != OperationKind.ROUGH_TURN
        && fromZMm(operation).orElse(Double.NEGATIVE_INFINITY) >= gripEndMm;
  }

  /** Where outside work begins; empty for all other work. */
  private OptionalDouble fromZMm(Operation operation) {
    String id = operation.featureId();
    return part.features().stream()
        .filter(feature -> feature.id().equals(id))
        .findFirst()
        .map(this::fromZMm)
        .orElseGet(() -> fromZMm(id));
  }

  private OptionalDouble fromZMm(String stepId) {
    return part.findOutside(stepId)
        .map(step -> OptionalDouble.of(step.fromZMm()))
        .orElseGet(OptionalDouble::empty);
  }

  private OptionalDouble fromZMm(Feature feature) {
    if (feature instanceof Flats flats) {
      return OptionalDouble.of(flats.fromZMm());
    }
    if (feature instanceof CrossHole hole) {
      return OptionalDouble.of(hole.zMm() - hole.diameterMm() / 2);
    }
    if (feature instanceof Engraving text && text.place() == Engraving.Place.OUTSIDE) {
      return OptionalDouble.of(text.atMm() - text.heightMm() / 2);
    }
    if (feature instanceof Groove groove && groove.place() == Groove.Place.OUTSIDE) {
      return OptionalDouble.of(groove.atMm());
    }
    if (feature instanceof ScrewThread thread) {
      return fromZMm(thread.onElement());
    }
    if (feature instanceof Knurl knurl) {
      return OptionalDouble.of(knurl.fromZMm());
    }
    if (feature instanceof MilledSlot slot && slot.place() == MilledSlot.Place.OUTSIDE) {
      return OptionalDouble.of(slot.zMm());
    }
    if (feature instanceof Deburring edges) {
      return part.features().stream()
          .filter(other -> other.id().equals(edges.ofFeature()))
          .findFirst()
          .map(this::fromZMm)
          .orElseGet(OptionalDouble::empty);
    }
    return OptionalDouble.empty();
  }
}
