package drumline.shape.section;

import drumline.shop.contour.Edge;
import drumline.shop.contour.OutsideStep;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.part.Bar;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * The outside of the piece as a solid body, without bores and grooves.
 *
 * @param solid the body
 * @param problems edges that do not fit
 */
record OutsideSection(HalfSection solid, List<Problem> problems) {

  static OutsideSection of(List<OutsideStep> steps, Bar bar) {
    if (steps.isEmpty()) {
      return new OutsideSection(HalfSection.EMPTY, List.of());
    }
    ContourChain chain = new ContourChain();
    OutsideStep first = steps.get(0);
    chain.add(first.fromZMm(), 0, Edge.NONE, first.id());
    for (OutsideStep step : steps) {
      chain.add(
          step.fromZMm(), radiusMm(step, step.startDiameterMm(), bar), step.frontEdge(), step.id());
      chain.add(
          step.toZMm(), radiusMm(step, step.endDiameterMm(), bar), step.backEdge(), step.id());
    }
    OutsideStep last = steps.get(steps.size() - 1);
    chain.add(last.toZMm(), 0, Edge.NONE, last.id());
    List<PointZr> points = new ArrayList<>(chain.points());
    return new OutsideSection(HalfSection.of(points), List.copyOf(chain.problems()));
  }

  /** The bar's own surface stands for its circle across corners. */
  private static double radiusMm(OutsideStep step, double diameterMm, Bar bar) {
    boolean isBar = step.surface() == OutsideStep.Surface.BAR;
    return (isBar ? bar.acrossCornersMm() : diameterMm) / 2;
  }
}
