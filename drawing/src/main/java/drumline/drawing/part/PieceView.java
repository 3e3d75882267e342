package drumline.drawing.part;

import drumline.drawing.piece.HoleForm;
import drumline.drawing.piece.MilledSection;
import drumline.drawing.piece.SurfaceMarks;
import drumline.drawing.piece.ThreadLines;
import drumline.drawing.svg.HatchKind;
import drumline.drawing.svg.SvgPath;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.view.OutsideView;
import drumline.drawing.view.SectionView;
import drumline.drawing.view.ViewFrame;
import drumline.shape.section.PartSection;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;

/** The piece itself, without its dimensions. */
final class PieceView {

  private final Part part;
  private final Bar bar;
  private final PartSection turned;
  private final MilledSection milled;

  PieceView(Part part, Bar bar) {
    this.part = part;
    this.bar = bar;
    this.turned = PartSection.of(part, bar);
    this.milled = MilledSection.of(part, bar, turned);
  }

  MilledSection milled() {
    return milled;
  }

  double outerRMm() {
    return Math.max(turned.outside().outerRMm(), bar.acrossCornersMm() / 2);
  }

  void draw(SvgPen pen, ViewFrame frame, Marked marked) {
    pen.open("piece");
    barLines(pen, frame);
    SectionView.draw(pen, milled.upper(), turned.piece(), frame, HatchKind.SECTION);
    OutsideView.draw(pen, milled.lower(), frame);
    ThreadLines.draw(pen, part, milled.upper(), milled.lower(), frame);
    SurfaceMarks.flats(pen, milled, turned.outside(), frame);
    SurfaceMarks.knurls(pen, part, milled.lower(), frame);
    SurfaceMarks.rims(pen, part, turned.piece(), frame);
    for (HoleForm hole : milled.holes()) {
      hole.draw(pen, milled.upper(), frame);
    }
    double out = 4;
    pen.line(
        "long-dash-dot",
        frame.x(0) - out,
        frame.axisY(),
        frame.x(part.lengthMm()) + out,
        frame.axisY());
    pen.close();
    contours(pen, frame, marked);
  }

  /** The bar's own outline where it stands clear of the piece. */
  private void barLines(SvgPen pen, ViewFrame frame) {
    double rMm = bar.acrossCornersMm() / 2;
    if ((rMm - turned.outside().outerRMm()) * frame.scale() > 0.4) {
      double from = frame.x(0) - 2;
      double to = frame.x(part.lengthMm()) + 2;
      pen.line("long-dash-double-dot", from, frame.up(rMm), to, frame.up(rMm));
      pen.line("long-dash-double-dot", from, frame.down(rMm), to, frame.down(rMm));
    }
  }

  /** One invisible line over each step, for pointing at it and for marking it. */
  private void contours(SvgPen pen, ViewFrame frame, Marked marked) {
    for (OutsideStep step : part.outside()) {
      SvgPath path = new SvgPath();
      double startRMm = step.startDiameterMm() / 2;
      double endRMm = step.endDiameterMm() / 2;
      path.move(frame.x(step.fromZMm()), frame.up(startRMm));
      path.line(frame.x(step.toZMm()), frame.up(endRMm));
      path.move(frame.x(step.fromZMm()), frame.down(startRMm));
      path.line(frame.x(step.toZMm()), frame.down(endRMm));
      contour(pen, step.id(), path, marked);
    }
    part.frontBore().forEach(step -> bore(pen, step, frame, marked));
    part.backBore().forEach(step -> bore(pen, step, frame, marked));
  }

  private void bore(SvgPen pen, BoreStep step, ViewFrame frame, Marked marked) {
    boolean isFront = step.end() == End.FRONT;
    double fromMm = isFront ? step.fromDepthMm() : part.lengthMm() - step.fromDepthMm();
    double toMm = isFront ? step.toDepthMm() : part.lengthMm() - step.toDepthMm();
    SvgPath path = new SvgPath().move(frame.x(fromMm), frame.up(step.startDiameterMm() / 2));
    path.line(frame.x(toMm), frame.up(step.endDiameterMm() / 2));
    contour(pen, step.id(), path, marked);
  }

  private static void contour(SvgPen pen, String id, SvgPath path, Marked marked) {
    pen.open(marked.classes(id), "data-element", id).path("contour", path).close();
  }
}
