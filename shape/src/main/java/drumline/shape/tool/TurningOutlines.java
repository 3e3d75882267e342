package drumline.shape.tool;

import drumline.shape.tool.ToolOutline.Dimension;
import drumline.shape.tool.ToolOutline.Side;
import drumline.shape.tool.ToolPart.Role;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.tooling.Tool;
import java.util.List;

/**
 * Turning tools, boring bars and threading tools with rhombic or pointed inserts.
 *
 * <p>Formula: with the feed along the axis the main edge runs from the cutting point under KAPR,
 * the minor edge under KAPR + EPSR. Source: [ISO-13399] names of dimensions; forms from memory.
 */
final class TurningOutlines {

  private static final double POST_MM = 14;
  private static final double BEHIND_MM = 0.6;

  /** From the point of a threading insert to its side: from memory. */
  private static final double THREAD_TO_EDGE_MM = 1.2;

  private TurningOutlines() {}

  static ToolOutline outside(Tool tool, double overhangMm) {
    ToolForms.Form form = ToolForms.of(tool.family().kind());
    double kaprDeg = tool.family().leadAngleDeg();
    double shankMm = form.shankMm();
    PointZr main = direction(kaprDeg);
    PointZr minor = direction(kaprDeg + form.includedDeg());
    double edgeMm = form.edgeMm();
    double faceZMm = 0.6 * edgeMm * main.zMm() - BEHIND_MM;
    double underZMm = 0.75 * edgeMm * minor.zMm();
    double underRMm = 0.75 * edgeMm * minor.rMm() + 1.2;
    double slope = Math.abs(minor.rMm() / minor.zMm());
    double backRMm = underRMm + Math.max(0, shankMm + underZMm) * slope;
    ToolPart shank =
        ToolPart.of(
            Role.SHANK,
            faceZMm,
            0.6 * edgeMm * main.rMm(),
            faceZMm,
            overhangMm,
            -shankMm,
            overhangMm,
            -shankMm,
            Math.min(backRMm, overhangMm - 2),
            underZMm,
            underRMm);
    return new ToolOutline(
        List.of(post(-shankMm - 4, faceZMm - 0.4, overhangMm), shank, rhombus(main, minor, edgeMm)),
        Side.ACROSS,
        List.of(
            Dimension.deg("KAPR", kaprDeg),
            Dimension.deg("EPSR", form.includedDeg()),
            Dimension.mm("RE", tool.family().noseRadiusMm()),
            Dimension.mm("H", shankMm)));
  }

  static ToolOutline inside(Tool tool, double overhangMm) {
    ToolForms.Form form = ToolForms.of(tool.family().kind());
    double kaprDeg = tool.family().leadAngleDeg();
    double barMm = tool.sizeMm();
    double edgeMm = Math.min(form.edgeMm(), 0.7 * barMm);
    double topMm = Math.max(0.3, 0.06 * barMm);
    PointZr main = down(direction(kaprDeg));
    PointZr minor = down(direction(kaprDeg + form.includedDeg()));
    return new ToolOutline(
        List.of(
            nose(barMm, overhangMm, -topMm - barMm / 2),
            ToolPart.box(Role.SHANK, -overhangMm, -BEHIND_MM, -topMm - barMm, -topMm),
            rhombus(main, minor, edgeMm)),
        Side.ALONG,
        List.of(
            Dimension.mm("DMM", barMm),
            Dimension.deg("KAPR", kaprDeg),
            Dimension.mm("RE", tool.family().noseRadiusMm())));
  }

  /** A pointed insert of 60° or what the tool's angle is on a blade, from above. */
  static ToolOutline threading(Tool tool, double overhangMm) {
    ToolForms.Form form = ToolForms.of(tool.family().kind());
    double angleDeg = tool.family().leadAngleDeg();
    double slope = 1 / Math.tan(Math.toRadians(angleDeg / 2));
    double left = THREAD_TO_EDGE_MM - form.edgeMm();
    double blade = form.edgeMm() * 2;
    return new ToolOutline(
        List.of(
            post(THREAD_TO_EDGE_MM - form.shankMm() - 4, THREAD_TO_EDGE_MM - 0.4, overhangMm),
            ToolPart.box(
                Role.SHANK,
                THREAD_TO_EDGE_MM - form.shankMm(),
                THREAD_TO_EDGE_MM,
                blade,
                overhangMm),
            ToolPart.of(
                Role.EDGE,
                0,
                0,
                THREAD_TO_EDGE_MM,
                THREAD_TO_EDGE_MM * slope,
                THREAD_TO_EDGE_MM,
                blade,
                left,
                blade,
                left,
                -left * slope)),
        Side.ACROSS,
        List.of(
            Dimension.deg("EPSR", angleDeg),
            Dimension.mm("PDX", THREAD_TO_EDGE_MM),
            Dimension.mm("CDX", blade)));
  }

  /** A pointed insert on a round bar that goes into a bore. */
  static ToolOutline threadingInside(Tool tool, double barMm, double overhangMm) {
    double halfMm = 2 * Math.tan(Math.toRadians(tool.family().leadAngleDeg() / 2));
    return new ToolOutline(
        List.of(
            nose(barMm, overhangMm, -2 - barMm / 2),
            ToolPart.box(Role.SHANK, -overhangMm, halfMm, -2 - barMm, -2),
            ToolPart.of(Role.EDGE, 0, 0, -halfMm, -2, halfMm, -2)),
        Side.ALONG,
        List.of(Dimension.deg("EPSR", tool.family().leadAngleDeg()), Dimension.mm("DMM", barMm)));
  }

  static ToolPart post(double fromZMm, double toZMm, double overhangMm) {
    return ToolPart.box(Role.HOLDER, fromZMm, toZMm, overhangMm, overhangMm + POST_MM);
  }

  /** The nut that holds a round shank. */
  static ToolPart nose(double shankMm, double overhangMm, double middleRMm) {
    double half = ToolForms.noseMm(shankMm) / 2;
    double bevel = half / 3;
    double back = -overhangMm - POST_MM;
    return ToolPart.of(
        Role.HOLDER,
        -overhangMm,
        middleRMm - half + bevel,
        -overhangMm,
        middleRMm + half - bevel,
        -overhangMm - bevel,
        middleRMm + half,
        back,
        middleRMm + half,
        back,
        middleRMm - half,
        -overhangMm - bevel,
        middleRMm - half);
  }

  private static ToolPart rhombus(PointZr main, PointZr minor, double edgeMm) {
    return ToolPart.of(
        Role.EDGE,
        0,
        0,
        edgeMm * main.zMm(),
        edgeMm * main.rMm(),
        edgeMm * (main.zMm() + minor.zMm()),
        edgeMm * (main.rMm() + minor.rMm()),
        edgeMm * minor.zMm(),
        edgeMm * minor.rMm());
  }

  private static PointZr direction(double fromFeedDeg) {
    double rad = Math.toRadians(fromFeedDeg);
    return new PointZr(Math.cos(rad), Math.sin(rad));
  }

  private static PointZr down(PointZr direction) {
    return new PointZr(direction.zMm(), -direction.rMm());
  }
}
