package drumline.route.hole;

import drumline.cutting.drilling.DrillPass.DepthTo;
import drumline.cutting.drilling.DrillPoint;
import drumline.route.draft.RouteDraft;
import drumline.route.draft.ToolChoice;
import drumline.route.feature.EdgeLine;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.End;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import java.util.ArrayList;
import java.util.List;

/** What tools in a hole take away, seen from the front or the back. */
public final class HoleRegions {
  private final End end;
  private final double lengthMm;

  HoleRegions(RouteDraft draft, End end) {
    this.end = end;
    this.lengthMm = draft.inquiry().part().lengthMm();
  }

  /** Point angle of a drill: the family's, or 118°. */
  static double point(ToolChoice choice) {
    double angle = choice.tool().family().leadAngleDeg();
    return angle >= 60 ? angle : 118;
  }

  /** A hole from the face to a depth, with the drill's cone beyond it or up to it. */
  CutRegion drilled(double diameterMm, double depthMm, double pointAngleDeg, DepthTo depthTo) {
    double cone = DrillPoint.lengthMm(diameterMm, pointAngleDeg);
    double shoulder = depthTo == DepthTo.TIP ? Math.max(0, depthMm - cone) : depthMm;
    double radius = diameterMm / 2;
    return new CutRegion(
        List.of(at(-1, 0), at(shoulder + cone, 0), at(shoulder, radius), at(-1, radius)));
  }

  /** A cone with its base at a depth. */
  CutRegion cone(double depthMm, double diameterMm, double angleDeg) {
    double height = DrillPoint.lengthMm(diameterMm, angleDeg);
    return new CutRegion(
        List.of(
            at(depthMm - 1, 0),
            at(depthMm + height, 0),
            at(depthMm, diameterMm / 2),
            at(depthMm - 1, diameterMm / 2)));
  }

  /** A straight hole from the face to a depth with a flat bottom. */
  CutRegion straight(double diameterMm, double fromMm, double toMm) {
    return new CutRegion(
        List.of(at(fromMm, 0), at(toMm, 0), at(toMm, diameterMm / 2), at(fromMm, diameterMm / 2)));
  }

  /** A step as the print shows it, with the edge at its mouth. */
  CutRegion step(BoreStep step) {
    List<PointZr> outline = new ArrayList<>();
    outline.add(at(step.fromDepthMm(), 0));
    outline.addAll(mouth(step));
    outline.add(at(step.toDepthMm(), step.endDiameterMm() / 2));
    outline.add(at(step.toDepthMm(), 0));
    return new CutRegion(outline);
  }

  /** The edge at a step's mouth alone. */
  CutRegion edge(BoreStep step) {
    List<PointZr> outline = new ArrayList<>();
    List<PointZr> line = mouth(step);
    outline.add(at(step.fromDepthMm(), 0));
    outline.addAll(line);
    outline.add(new PointZr(line.get(line.size() - 1).zMm(), 0));
    return new CutRegion(outline);
  }

  private List<PointZr> mouth(BoreStep step) {
    double face = end == End.FRONT ? step.fromDepthMm() : lengthMm - step.fromDepthMm();
    return EdgeLine.mouth(step.mouthEdge(), face, step.startDiameterMm() / 2, end);
  }

  private PointZr at(double depthMm, double radiusMm) {
    return new PointZr(end == End.FRONT ? depthMm : lengthMm - depthMm, radiusMm);
  }
}
