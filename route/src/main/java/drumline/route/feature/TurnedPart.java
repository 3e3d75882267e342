package drumline.route.feature;

import drumline.route.draft.RouteDraft;
import drumline.route.rule.Practice;
import drumline.shop.contour.Edge;
import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.ScrewThread;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.part.Part;
import java.util.List;
import java.util.Optional;

/**
 * The piece as turning leaves it: steps that carry a rolled thread have the blank's diameter, since
 * rolling raises the crests; their front edges keep the diameter at which they begin.
 */
public final class TurnedPart {
  private TurnedPart() {}

  /** The piece of an inquiry as turning leaves it. */
  public static Part of(Inquiry inquiry, Practice practice) {
    return of(new RouteDraft(inquiry, practice));
  }

  public static Part of(RouteDraft draft) {
    Part part = draft.inquiry().part();
    List<OutsideStep> outside = part.outside().stream().map(step -> turned(draft, step)).toList();
    return new Part(
        part.name(),
        part.lengthMm(),
        part.lengthTolerance(),
        part.roughnessRaUm(),
        part.frontFaceRoughnessRaUm(),
        outside,
        part.frontBore(),
        part.backBore(),
        part.features(),
        part.relations());
  }

  private static OutsideStep turned(RouteDraft draft, OutsideStep step) {
    Optional<ScrewThread> rolled = ThreadChoice.rolledOn(draft, step.id());
    if (rolled.isEmpty() || step.isTaper()) {
      return step;
    }
    double blank = rolled.get().size().start().rollBlankMm().orElse(step.startDiameterMm());
    double lowered = (step.startDiameterMm() - blank) / 2;
    return new OutsideStep(
        step.id(),
        step.fromZMm(),
        step.toZMm(),
        blank,
        blank,
        step.surface(),
        step.tolerance(),
        step.roughnessRaUm(),
        lowered(step.frontEdge(), lowered),
        lowered(step.backEdge(), lowered));
  }

  /** The part of an edge that lies below a surface lowered by a depth. */
  private static Edge lowered(Edge edge, double depthMm) {
    if (edge.kind() != Edge.Kind.CHAMFER) {
      return edge;
    }
    double radial = edge.radialMm() - depthMm;
    return radial <= 0
        ? Edge.NONE
        : new Edge(
            Edge.Kind.CHAMFER, radial / Math.tan(Math.toRadians(edge.angleDeg())), edge.angleDeg());
  }
}
