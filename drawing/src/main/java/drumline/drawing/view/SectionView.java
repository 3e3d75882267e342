package drumline.drawing.view;

import drumline.drawing.svg.HatchKind;
import drumline.drawing.svg.SvgPath;
import drumline.drawing.svg.SvgPen;
import drumline.shape.section.HalfSection;
import drumline.shape.section.Span;
import drumline.shop.operation.CutRegion.PointZr;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The upper half of a piece: cut material hatched, its outline, and the edges seen in bores. */
public final class SectionView {

  private static final double BESIDE_MM = 1e-4;
  private static final double ON_AXIS_MM = 1e-6;

  private SectionView() {}

  /** Draws the section of a turned body. */
  public static void draw(SvgPen pen, HalfSection section, ViewFrame frame, HatchKind kind) {
    draw(pen, section, section, frame, kind);
  }

  /**
   * Draws the section.
   *
   * @param section material that the plane cuts
   * @param turned the same before anything was milled or drilled into it from the side: its edges
   *     run all around and are seen in the bores
   */
  public static void draw(
      SvgPen pen, HalfSection section, HalfSection turned, ViewFrame frame, HatchKind kind) {
    hatch(pen, section, frame, kind);
    pen.path("wide", outline(section, frame));
    SvgPath edges = new SvgPath();
    boreEdges(section)
        .forEach(
            (place, lowRMm) -> {
              edges.move(frame.x(place.zMm()), frame.up(place.rMm()));
              edges.line(frame.x(place.zMm()), frame.up(lowRMm));
            });
    pen.path("wide", edges);
  }

  /** Fills a section with a pattern, without its outline. */
  public static void hatch(SvgPen pen, HalfSection section, ViewFrame frame, HatchKind kind) {
    SvgPath area = new SvgPath();
    for (List<PointZr> ring : section.outlines()) {
      for (int i = 0; i < ring.size(); i++) {
        step(area, i == 0, frame.x(ring.get(i).zMm()), frame.up(ring.get(i).rMm()));
      }
      area.close();
    }
    pen.path("section", area, "fill", SvgPen.fill(kind), "fill-rule", "evenodd", "stroke", "none");
  }

  /** The outline without the parts that lie on the axis. */
  public static SvgPath outline(HalfSection section, ViewFrame frame) {
    SvgPath path = new SvgPath();
    for (List<PointZr> ring : section.outlines()) {
      boolean penDown = false;
      for (int i = 0; i < ring.size(); i++) {
        PointZr from = ring.get(i);
        PointZr to = ring.get((i + 1) % ring.size());
        boolean onAxis = from.rMm() < ON_AXIS_MM && to.rMm() < ON_AXIS_MM;
        if (!onAxis) {
          if (!penDown) {
            path.move(frame.x(from.zMm()), frame.up(from.rMm()));
          }
          path.line(frame.x(to.zMm()), frame.up(to.rMm()));
        }
        penDown = !onAxis;
      }
    }
    return path;
  }

  private static void step(SvgPath path, boolean isFirst, double x, double y) {
    if (isFirst) {
      path.move(x, y);
    } else {
      path.line(x, y);
    }
  }

  /** Corners whose circles are seen inside the bore, with the radius where material hides them. */
  private static Map<PointZr, Double> boreEdges(HalfSection section) {
    Map<PointZr, Double> edges =
        new TreeMap<>(Comparator.comparingDouble(PointZr::zMm).thenComparingDouble(PointZr::rMm));
    for (PointZr corner : section.sharpCorners()) {
      double topRMm = corner.rMm() - BESIDE_MM;
      List<Span> before = section.spansAtZ(corner.zMm() - BESIDE_MM);
      List<Span> behind = section.spansAtZ(corner.zMm() + BESIDE_MM);
      boolean hidden = covers(before, topRMm - BESIDE_MM) && covers(behind, topRMm - BESIDE_MM);
      if (topRMm > ON_AXIS_MM && !hidden) {
        edges.put(corner, lowest(before, behind, topRMm));
      }
    }
    return edges;
  }

  private static boolean covers(List<Span> spans, double rMm) {
    return spans.stream().anyMatch(span -> span.covers(rMm));
  }

  private static double lowest(List<Span> before, List<Span> behind, double topRMm) {
    double lowRMm = 0;
    for (Span one : before) {
      for (Span other : behind) {
        double bottomMm = Math.max(one.fromMm(), other.fromMm());
        double upperMm = Math.min(one.toMm(), other.toMm());
        if (upperMm > bottomMm && upperMm < topRMm) {
          lowRMm = Math.max(lowRMm, upperMm);
        }
      }
    }
    return lowRMm;
  }
}
