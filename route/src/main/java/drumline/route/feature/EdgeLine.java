package drumline.route.feature;

import drumline.shop.contour.Edge;
import drumline.shop.contour.End;
import drumline.shop.operation.CutRegion.PointZr;
import java.util.ArrayList;
import java.util.List;

/** Outlines of edges in the half-section. */
public final class EdgeLine {
  private static final int ARC_STEPS = 24;

  private EdgeLine() {}

  /** Whether the print gives the edge a form to cut. */
  public static boolean hasForm(Edge edge) {
    return edge.kind() == Edge.Kind.CHAMFER || edge.kind() == Edge.Kind.RADIUS;
  }

  /**
   * From the face of an outside edge out to the surface of the given radius.
   *
   * @param faceZMm where the face stands
   * @param radiusMm radius of the surface
   * @param looksTo the end that the face looks to: the material lies on its other side
   */
  public static List<PointZr> rising(Edge edge, double faceZMm, double radiusMm, End looksTo) {
    return line(edge, faceZMm, radiusMm, looksTo, -1);
  }

  /** From the face of a bore's mouth in to the wall of the given radius. */
  public static List<PointZr> mouth(Edge edge, double faceZMm, double radiusMm, End looksTo) {
    return line(edge, faceZMm, radiusMm, looksTo, 1);
  }

  private static List<PointZr> line(
      Edge edge, double faceZ, double radius, End looksTo, int outward) {
    int inward = looksTo == End.FRONT ? 1 : -1;
    List<PointZr> points = new ArrayList<>();
    double axial = edge.sizeMm();
    double radial = edge.radialMm();
    switch (edge.kind()) {
      case NONE, BREAK -> points.add(new PointZr(faceZ, radius));
      case CHAMFER -> {
        points.add(new PointZr(faceZ, radius + outward * radial));
        points.add(new PointZr(faceZ + inward * axial, radius));
      }
      case RADIUS -> {
        for (int i = 0; i <= ARC_STEPS; i++) {
          double angle = Math.PI / 2 * i / ARC_STEPS;
          points.add(
              new PointZr(
                  faceZ + inward * axial * (1 - Math.cos(angle)),
                  radius + outward * axial * (1 - Math.sin(angle))));
        }
      }
    }
    return points;
  }
}
