package drumline.route.finish;

import drumline.route.draft.RouteDraft;
import drumline.route.feature.Surface;
import drumline.shop.contour.OutsideStep;
import drumline.shop.operation.OperationKind;
import drumline.shop.problem.Problem;
import java.util.stream.Stream;

/** Says which tolerances and roughnesses of the print no operation of the drum reaches. */
public final class ReachCheck {
  private ReachCheck() {}

  /** Notes a warning for each surface beyond reach. */
  public static void check(RouteDraft draft) {
    if (!draft.uses("within-reach")) {
      return;
    }
    draft.inquiry().part().outside().stream()
        .filter(step -> step.surface() == OutsideStep.Surface.TURNED)
        .map(step -> Surface.of(draft, step))
        .filter(Surface::isOutOfReachOutside)
        .forEach(surface -> warn(draft, surface, OperationKind.FINISH_TURN));
    Stream.concat(
            draft.inquiry().part().frontBore().stream(), draft.inquiry().part().backBore().stream())
        .map(step -> Surface.of(draft, step))
        .filter(Surface::isOutOfReachInside)
        .forEach(surface -> warn(draft, surface, OperationKind.FINISH_BORE, OperationKind.REAM));
  }

  private static void warn(RouteDraft draft, Surface surface, OperationKind... kinds) {
    draft.problem(
        Problem.warning(
            "beyond-reach",
            surface.id(),
            surface.asked() + " asked, which no operation of the drum reaches",
            surface.reachable(kinds),
            "Maybe leave stock for grinding or honing, or widen the tolerance; a shop that holds it"
                + " can say so under overrides."));
  }
}
