package drumline.shape.section;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.Edge;
import drumline.shop.contour.End;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * The room of a bore made from one end, with its drill cones.
 *
 * @param room what is not there
 * @param cones the drills' cones beyond full diameters, which may be there or not
 * @param problems edges that do not fit
 */
record BoreSection(HalfSection room, HalfSection cones, List<Problem> problems) {

  static BoreSection of(List<BoreStep> steps, End end, double partLengthMm, double pointAngleDeg) {
    if (steps.isEmpty()) {
      return new BoreSection(HalfSection.EMPTY, HalfSection.EMPTY, List.of());
    }
    ContourChain chain = new ContourChain();
    BoreStep first = steps.get(0);
    double farOutMm = first.startDiameterMm() / 2 + first.mouthEdge().radialMm() + 1;
    chain.add(first.fromDepthMm(), farOutMm, Edge.NONE, first.id());
    for (BoreStep step : steps) {
      chain.add(step.fromDepthMm(), step.startDiameterMm() / 2, step.mouthEdge(), step.id());
      chain.add(step.toDepthMm(), step.endDiameterMm() / 2, Edge.NONE, step.id());
    }
    BoreStep last = steps.get(steps.size() - 1);
    chain.add(last.toDepthMm(), 0, Edge.NONE, last.id());
    List<PointZr> points = new ArrayList<>(chain.points().subList(1, chain.points().size()));
    points.add(new PointZr(first.fromDepthMm(), 0));
    HalfSection room = HalfSection.of(placed(points, end, partLengthMm));
    HalfSection cones = HalfSection.EMPTY;
    for (BoreStep step : steps) {
      if (step.bottom() == BoreStep.Bottom.DRILL_POINT) {
        cones = cones.union(HalfSection.of(placed(cone(step, pointAngleDeg), end, partLengthMm)));
      }
    }
    return new BoreSection(
        room.union(cones), cones.subtract(room), chain.problems().stream().distinct().toList());
  }

  /** The drill's cone beyond the full diameter: its length is d / (2·tan(σ/2)). */
  private static List<PointZr> cone(BoreStep step, double pointAngleDeg) {
    double radiusMm = step.endDiameterMm() / 2;
    double lengthMm = radiusMm / Math.tan(Math.toRadians(pointAngleDeg / 2));
    return List.of(
        new PointZr(step.toDepthMm(), 0),
        new PointZr(step.toDepthMm(), radiusMm),
        new PointZr(step.toDepthMm() + lengthMm, 0));
  }

  private static List<PointZr> placed(List<PointZr> points, End end, double partLengthMm) {
    return end == End.FRONT
        ? points
        : points.stream().map(p -> new PointZr(partLengthMm - p.zMm(), p.rMm())).toList();
  }
}
