package drumline.shape.section;

import drumline.shop.contour.Edge;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Corners of a contour in order, each with the edge that the print asks there, outward corners and
 * roots alike; gives the contour's points with chamfers and radii put in.
 */
final class ContourChain {

  private static final double SAME_PLACE_MM = 1e-9;

  private record Corner(PointZr point, Edge edge, String element) {}

  private final List<Corner> corners = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  /** Adds a corner; one at the same place as the last is merged with it. */
  void add(double zMm, double rMm, Edge edge, String element) {
    PointZr point = new PointZr(zMm, rMm);
    if (!corners.isEmpty()) {
      Corner last = corners.get(corners.size() - 1);
      if (distanceMm(last.point(), point) <= SAME_PLACE_MM) {
        if (!isMeasured(last.edge())) {
          corners.set(corners.size() - 1, new Corner(last.point(), edge, element));
        }
        return;
      }
    }
    corners.add(new Corner(point, edge, element));
  }

  /** What did not fit; filled by {@link #points()}. */
  List<Problem> problems() {
    return problems;
  }

  /** The contour with its edges; an edge that does not fit is told and drawn sharp. */
  List<PointZr> points() {
    List<PointZr> points = new ArrayList<>();
    double usedMm = 0;
    for (int i = 0; i < corners.size(); i++) {
      Corner corner = corners.get(i);
      CornerCut cut = i == 0 || i == corners.size() - 1 ? null : cut(i, usedMm);
      if (cut == null) {
        points.add(corner.point());
        usedMm = 0;
      } else {
        points.addAll(cut.points());
        usedMm = cut.afterMm();
      }
    }
    return points;
  }

  private @Nullable CornerCut cut(int i, double usedMm) {
    Corner corner = corners.get(i);
    if (!isMeasured(corner.edge())) {
      return null;
    }
    PointZr before = corners.get(i - 1).point();
    PointZr after = corners.get(i + 1).point();
    CornerCut cut = CornerCut.find(before, corner.point(), after, corner.edge());
    if (cut == null) {
      if (!isStraight(before, corner.point(), after)) {
        problems.add(
            notThere(corner, "two surfaces that meet square to the axis or under an angle"));
      }
      return null;
    }
    double roomBeforeMm = distanceMm(before, corner.point()) - usedMm;
    double roomAfterMm = distanceMm(corner.point(), after);
    if (cut.beforeMm() > roomBeforeMm + 1e-7 || cut.afterMm() > roomAfterMm + 1e-7) {
      double roomMm = Math.min(roomBeforeMm, roomAfterMm);
      problems.add(notThere(corner, String.format(Locale.ROOT, "at most %.3f mm here", roomMm)));
      return null;
    }
    return cut;
  }

  private static Problem notThere(Corner corner, String allowed) {
    String found =
        String.format(
            Locale.ROOT,
            "%s of %.3f mm at z %.3f mm, Ø%.3f mm",
            corner.edge().kind() == Edge.Kind.CHAMFER ? "chamfer" : "radius",
            corner.edge().sizeMm(),
            corner.point().zMm(),
            2 * corner.point().rMm());
    return Problem.warning(
        "edge-does-not-fit",
        corner.element(),
        found,
        allowed,
        "Maybe the edge belongs to the other end of the step.");
  }

  private static boolean isMeasured(Edge edge) {
    boolean formed = edge.kind() == Edge.Kind.CHAMFER || edge.kind() == Edge.Kind.RADIUS;
    return formed && edge.sizeMm() > 0;
  }

  private static boolean isStraight(PointZr a, PointZr b, PointZr c) {
    double cross =
        (b.zMm() - a.zMm()) * (c.rMm() - b.rMm()) - (b.rMm() - a.rMm()) * (c.zMm() - b.zMm());
    return Math.abs(cross) < 1e-9;
  }

  private static double distanceMm(PointZr a, PointZr b) {
    return Math.hypot(a.zMm() - b.zMm(), a.rMm() - b.rMm());
  }
}
