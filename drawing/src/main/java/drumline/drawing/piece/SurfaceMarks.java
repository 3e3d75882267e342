package drumline.drawing.piece;

import drumline.drawing.svg.HatchKind;
import drumline.drawing.svg.SvgPath;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.view.ViewFrame;
import drumline.shape.section.HalfSection;
import drumline.shape.section.Span;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.Knurl;
import drumline.shop.part.Part;

/**
 * What lies on the outside: flats with crossed diagonals, part-hatched knurls, rims of cross holes.
 *
 * <p>Source: [ISO-128-3] crossed diagonals for flat faces; [DIN-82] knurls (both from memory).
 */
public final class SurfaceMarks {

  private SurfaceMarks() {}

  public static void flats(SvgPen pen, MilledSection milled, HalfSection outside, ViewFrame frame) {
    for (FlatForm flat : milled.flats()) {
      double bodyRMm = MilledSection.bodyRMm(outside, flat.fromZMm(), flat.toZMm());
      double halfMm = flat.halfWidthMm(bodyRMm);
      if (halfMm > 0) {
        flat(pen, flat, halfMm, outside, frame);
      }
    }
  }

  private static void flat(
      SvgPen pen, FlatForm flat, double halfMm, HalfSection outside, ViewFrame frame) {
    double edgeRMm = Math.hypot(halfMm, flat.insideRMm());
    double low = frame.down(halfMm);
    for (Span span : outside.spansAtR(edgeRMm - 0.001)) {
      double from = frame.x(Math.max(flat.fromZMm(), span.fromMm()));
      double to = frame.x(Math.min(flat.toZMm(), span.toMm()));
      if (to > from) {
        pen.line("wide", from, low, to, low);
      }
    }
    if (flat.origin() == FlatForm.Origin.MILLED) {
      double from = frame.x(flat.fromZMm());
      double to = frame.x(flat.toZMm());
      SvgPath ends = new SvgPath().move(from, frame.down(0)).line(from, low);
      ends.move(to, frame.down(0)).line(to, low);
      pen.path("wide", ends);
      SvgPath cross = new SvgPath().move(from, frame.down(0)).line(to, low);
      cross.move(from, low).line(to, frame.down(0));
      pen.path("thin", cross);
    }
  }

  public static void knurls(SvgPen pen, Part part, HalfSection shadow, ViewFrame frame) {
    for (Knurl knurl : part.features(Knurl.class)) {
      double rMm = MilledSection.topRMm(shadow, (knurl.fromZMm() + knurl.toZMm()) / 2);
      double from = frame.x(knurl.fromZMm());
      double to = frame.x(knurl.toZMm());
      SvgPath patch = new SvgPath().move(from, frame.down(rMm)).line(to, frame.down(rMm));
      patch.line(to, frame.down(rMm * 0.62));
      patch.curve((from + to) / 2, frame.down(rMm * 0.62), (from + to) / 2, frame.down(rMm * 0.45));
      patch.curve((from + to) / 2, frame.down(rMm * 0.28), from, frame.down(rMm * 0.28)).close();
      HatchKind kind =
          knurl.form() == Knurl.Form.STRAIGHT ? HatchKind.KNURL_STRAIGHT : HatchKind.KNURL_DIAMOND;
      pen.path("knurl", patch, "fill", SvgPen.fill(kind), "stroke", "none");
      SvgPath ends = new SvgPath().move(from, frame.down(0)).line(from, frame.down(rMm));
      ends.move(to, frame.down(0)).line(to, frame.down(rMm));
      pen.path("wide", ends);
    }
  }

  /** The rims that a square cross hole leaves on the outside and on the bore wall. */
  public static void rims(SvgPen pen, Part part, HalfSection beforeHoles, ViewFrame frame) {
    for (CrossHole hole : part.features(CrossHole.class)) {
      if (hole.leanDeg() == 0) {
        double deepestMm = hole.reach() == CrossHole.Reach.THROUGH ? 1e9 : hole.depthMm();
        double topMm = MilledSection.topRMm(beforeHoles, hole.zMm());
        for (Span wall : beforeHoles.spansAtZ(hole.zMm())) {
          rim(pen, hole, wall.toMm(), frame);
          if (wall.fromMm() > hole.diameterMm() / 2 && topMm - wall.fromMm() <= deepestMm) {
            rim(pen, hole, wall.fromMm(), frame);
          }
        }
      }
    }
  }

  private static void rim(SvgPen pen, CrossHole hole, double rMm, ViewFrame frame) {
    double halfMm = hole.diameterMm() / 2;
    if (rMm <= halfMm) {
      return;
    }
    double dipMm = rMm - Math.sqrt(rMm * rMm - halfMm * halfMm);
    SvgPath rim = new SvgPath().move(frame.x(hole.zMm() - halfMm), frame.up(rMm));
    rim.curve(
        frame.x(hole.zMm()),
        frame.up(rMm - 2 * dipMm),
        frame.x(hole.zMm() + halfMm),
        frame.up(rMm));
    pen.path("wide", rim);
  }
}
