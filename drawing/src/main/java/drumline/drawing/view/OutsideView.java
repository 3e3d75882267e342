package drumline.drawing.view;

import drumline.drawing.svg.SvgPath;
import drumline.drawing.svg.SvgPen;
import drumline.shape.section.HalfSection;
import drumline.shop.operation.CutRegion.PointZr;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The lower half of a piece as seen from outside: its silhouette and visible edges. */
public final class OutsideView {

  private static final double ON_AXIS_MM = 1e-6;

  private OutsideView() {}

  /**
   * Draws the view.
   *
   * @param shadow all that lies behind the outside
   */
  public static void draw(SvgPen pen, HalfSection shadow, ViewFrame frame) {
    SvgPath path = new SvgPath();
    for (List<PointZr> ring : shadow.outlines()) {
      for (int i = 0; i < ring.size(); i++) {
        PointZr from = ring.get(i);
        PointZr to = ring.get((i + 1) % ring.size());
        if (from.rMm() > ON_AXIS_MM || to.rMm() > ON_AXIS_MM) {
          path.move(frame.x(from.zMm()), frame.down(from.rMm()));
          path.line(frame.x(to.zMm()), frame.down(to.rMm()));
        }
      }
    }
    edges(shadow)
        .forEach(
            (zMm, rMm) ->
                path.move(frame.x(zMm), frame.down(0)).line(frame.x(zMm), frame.down(rMm)));
    pen.path("wide", path);
  }

  /** Greatest radius of a corner at each place along the axis. */
  private static Map<Double, Double> edges(HalfSection shadow) {
    Map<Double, Double> edges = new TreeMap<>();
    for (PointZr corner : shadow.sharpCorners()) {
      if (corner.rMm() > ON_AXIS_MM) {
        edges.merge(corner.zMm(), corner.rMm(), Math::max);
      }
    }
    return edges;
  }
}
