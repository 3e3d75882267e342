package drumline.shape.section;

import drumline.shop.contour.Edge;
import drumline.shop.operation.CutRegion.PointZr;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A corner replaced by a chamfer or by a radius that touches both sides.
 *
 * @param points points that stand for the corner
 * @param beforeMm length taken from the side before it
 * @param afterMm length taken from the side after it
 */
record CornerCut(List<PointZr> points, double beforeMm, double afterMm) {

  /** The cut, or null where the corner's sides do not allow this kind of edge. */
  static @Nullable CornerCut find(PointZr before, PointZr corner, PointZr after, Edge edge) {
    PointZr back = direction(corner, before);
    PointZr ahead = direction(corner, after);
    return edge.kind() == Edge.Kind.CHAMFER
        ? chamfer(corner, back, ahead, edge)
        : radius(corner, back, ahead, edge.sizeMm());
  }

  private static @Nullable CornerCut chamfer(
      PointZr corner, PointZr back, PointZr ahead, Edge edge) {
    boolean backIsShoulder = Math.abs(back.zMm()) < 1e-12;
    boolean aheadIsShoulder = Math.abs(ahead.zMm()) < 1e-12;
    if (backIsShoulder == aheadIsShoulder) {
      return null;
    }
    PointZr surface = backIsShoulder ? ahead : back;
    double alongMm = edge.sizeMm() / Math.abs(surface.zMm());
    double radialMm = edge.radialMm();
    double beforeMm = backIsShoulder ? radialMm : alongMm;
    double afterMm = backIsShoulder ? alongMm : radialMm;
    List<PointZr> points = List.of(at(corner, back, beforeMm), at(corner, ahead, afterMm));
    return new CornerCut(points, beforeMm, afterMm);
  }

  private static @Nullable CornerCut radius(
      PointZr corner, PointZr back, PointZr ahead, double radiusMm) {
    double cosine = back.zMm() * ahead.zMm() + back.rMm() * ahead.rMm();
    double betweenRad = Math.acos(Math.max(-1, Math.min(1, cosine)));
    if (Math.PI - betweenRad < 1e-6 || betweenRad < 1e-6) {
      return null;
    }
    double tangentMm = radiusMm / Math.tan(betweenRad / 2);
    PointZr middle = direction(new PointZr(0, 0), sum(back, ahead));
    PointZr centre = at(corner, middle, radiusMm / Math.sin(betweenRad / 2));
    PointZr from = at(corner, back, tangentMm);
    double cross = back.zMm() * ahead.rMm() - back.rMm() * ahead.zMm();
    double turnRad = (Math.PI - betweenRad) * (cross > 0 ? -1 : 1);
    List<PointZr> points = new ArrayList<>();
    points.add(from);
    points.addAll(ArcChords.points(centre, from, turnRad));
    return new CornerCut(points, tangentMm, tangentMm);
  }

  private static PointZr at(PointZr from, PointZr direction, double distanceMm) {
    return new PointZr(
        from.zMm() + direction.zMm() * distanceMm, from.rMm() + direction.rMm() * distanceMm);
  }

  private static PointZr sum(PointZr a, PointZr b) {
    return new PointZr(a.zMm() + b.zMm(), a.rMm() + b.rMm());
  }

  private static PointZr direction(PointZr from, PointZr to) {
    double z = to.zMm() - from.zMm();
    double r = to.rMm() - from.rMm();
    double length = Math.hypot(z, r);
    return new PointZr(z / length, r / length);
  }
}
