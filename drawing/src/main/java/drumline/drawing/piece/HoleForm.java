package drumline.drawing.piece;

import drumline.drawing.svg.SvgPath;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.view.ViewFrame;
import drumline.shape.section.HalfSection;
import drumline.shape.section.PartSection;
import drumline.shop.contour.End;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.FaceHoles;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.thread.ThreadSize;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A drilled hole whose axis lies in the plane of the section.
 *
 * @param mouth where its axis meets the surface
 * @param alongZ part of its direction along the piece's axis
 * @param alongR part of its direction away from the piece's axis
 * @param radiusMm half its diameter
 * @param depthMm depth to the full diameter
 * @param outMm how far the room is cut free before the mouth
 * @param majorRMm half the major diameter of the thread tapped in it, 0 without thread
 */
public record HoleForm(
    PointZr mouth,
    double alongZ,
    double alongR,
    double radiusMm,
    double depthMm,
    double outMm,
    double majorRMm) {

  static HoleForm of(CrossHole hole, double surfaceRMm) {
    double leanRad = Math.toRadians(hole.leanDeg());
    double depthMm =
        hole.reach() == CrossHole.Reach.THROUGH
            ? surfaceRMm / Math.cos(leanRad) + hole.diameterMm()
            : hole.depthMm();
    return new HoleForm(
        new PointZr(hole.zMm(), surfaceRMm),
        Math.sin(leanRad),
        -Math.cos(leanRad),
        hole.diameterMm() / 2,
        depthMm,
        hole.diameterMm(),
        majorRMm(hole.thread()));
  }

  static HoleForm of(FaceHoles holes, double lengthMm) {
    boolean isFront = holes.end() == End.FRONT;
    return new HoleForm(
        new PointZr(isFront ? 0 : lengthMm, holes.pitchCircleMm() / 2),
        isFront ? 1 : -1,
        0,
        holes.diameterMm() / 2,
        holes.depthMm(),
        0.5,
        majorRMm(holes.thread()));
  }

  private static double majorRMm(@Nullable ThreadSize thread) {
    return thread == null ? 0 : thread.majorMm() / 2;
  }

  /** The drilled room with the drill's cone. */
  HalfSection room() {
    double coneMm = radiusMm / Math.tan(Math.toRadians(PartSection.USUAL_POINT_ANGLE_DEG / 2));
    return HalfSection.of(
        List.of(
            at(-outMm, radiusMm),
            at(depthMm, radiusMm),
            at(depthMm + coneMm, 0),
            at(depthMm, -radiusMm),
            at(-outMm, -radiusMm)));
  }

  /** Draws its axis, and the thin lines of its thread. */
  public void draw(SvgPen pen, HalfSection material, ViewFrame frame) {
    SvgPath axis = new SvgPath();
    line(axis, at(-1.5 / frame.scale(), 0), at(visibleMm() + 1.5 / frame.scale(), 0), frame);
    pen.path("long-dash-dot", axis);
    if (majorRMm > 0) {
      SvgPath thread = new SvgPath();
      double reachMm = Math.min(depthMm, deepestMm(material));
      line(thread, at(0, majorRMm), at(reachMm, majorRMm), frame);
      line(thread, at(0, -majorRMm), at(reachMm, -majorRMm), frame);
      pen.path("thin", thread);
    }
  }

  /** How far along its axis there is material beside the hole. */
  private double deepestMm(HalfSection material) {
    double stepMm = 0.05;
    double deepMm = 0;
    for (double at = 0; at < depthMm; at += stepMm) {
      PointZr beside = at(at, majorRMm);
      if (material.spansAtZ(beside.zMm()).stream().anyMatch(span -> span.covers(beside.rMm()))) {
        deepMm = at;
      }
    }
    return deepMm;
  }

  private double visibleMm() {
    return alongR < 0 ? Math.min(depthMm, mouth.rMm() / -alongR) : depthMm;
  }

  private static void line(SvgPath path, PointZr from, PointZr to, ViewFrame frame) {
    path.move(frame.x(from.zMm()), frame.up(from.rMm()));
    path.line(frame.x(to.zMm()), frame.up(to.rMm()));
  }

  private PointZr at(double deepMm, double asideMm) {
    return new PointZr(
        mouth.zMm() + alongZ * deepMm - alongR * asideMm,
        mouth.rMm() + alongR * deepMm + alongZ * asideMm);
  }
}
