package drumline.shop.check;

import static drumline.shop.check.Findings.mm;

import drumline.shop.contour.Edge;
import drumline.shop.contour.OutsideStep;
import drumline.shop.part.Part;

/** The outside runs from the front face to the back without gap, and its edges fit their steps. */
final class ContourCheck {

  private ContourCheck() {}

  static void check(Part part, Findings findings) {
    if (part.outside().isEmpty()) {
      findings.error("outside-missing", "part", "no outside step", "one step or more");
      return;
    }
    double reachedMm = 0;
    for (OutsideStep step : part.outside()) {
      if (Math.abs(step.fromZMm() - reachedMm) > Profile.ROUNDING_MM) {
        findings.error(
            "outside-gap",
            step.id(),
            "begins at " + mm(step.fromZMm()),
            "at " + mm(reachedMm) + ", where the step before it ends");
      }
      edges(step, findings);
      reachedMm = step.toZMm();
    }
    if (Math.abs(reachedMm - part.lengthMm()) > Profile.ROUNDING_MM) {
      String last = part.outside().get(part.outside().size() - 1).id();
      findings.error(
          "outside-length",
          last,
          "the outside ends at " + mm(reachedMm),
          "at the part's length, " + mm(part.lengthMm()),
          "Maybe \"to: " + mm(part.lengthMm()) + "\" in the last step.");
    }
  }

  private static void edges(OutsideStep step, Findings findings) {
    double alongMm = along(step.frontEdge()) + along(step.backEdge());
    if (alongMm > step.lengthMm() + Profile.ROUNDING_MM) {
      findings.error(
          "edge-too-large",
          step.id(),
          "edges of " + mm(alongMm) + " on a step of " + mm(step.lengthMm()),
          "edges that fit the step");
    }
    double acrossMm = Math.max(step.frontEdge().radialMm(), step.backEdge().radialMm());
    if (2 * acrossMm >= step.smallestDiameterMm()) {
      findings.error(
          "edge-too-large",
          step.id(),
          "an edge " + mm(acrossMm) + " deep on a diameter of " + mm(step.smallestDiameterMm()),
          "an edge less deep than the radius");
    }
  }

  private static double along(Edge edge) {
    return edge.kind() == Edge.Kind.NONE ? 0 : edge.sizeMm();
  }
}
