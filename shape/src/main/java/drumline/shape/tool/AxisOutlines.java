package drumline.shape.tool;

import drumline.shape.tool.ToolOutline.Dimension;
import drumline.shape.tool.ToolOutline.Side;
import drumline.shape.tool.ToolPart.Role;
import drumline.shop.operation.CutRegion.PointZr;
import java.util.List;

/**
 * Round tools with their tip at the cutting point: drills, reamers, taps, mills; lying along the
 * axis, or standing across it where they are driven from the side.
 *
 * <p>Formula: length of a point = DC / (2·tan(SIG/2)). Source: [ISO-13399] names of dimensions (DC
 * diameter, SIG point angle, LU usable length).
 */
final class AxisOutlines {

  private AxisOutlines() {}

  /** A drill with a point; 180° gives a flat end. */
  static ToolOutline drill(double diameterMm, double pointDeg, double usableMm, double overhangMm) {
    double point = diameterMm / 2 / Math.tan(Math.toRadians(pointDeg / 2));
    List<Dimension> dimensions =
        pointDeg > 179
            ? List.of(Dimension.mm("DC", diameterMm))
            : List.of(Dimension.mm("DC", diameterMm), Dimension.deg("SIG", pointDeg));
    return round(
        diameterMm, diameterMm, point, 0, Math.min(usableMm, overhangMm), overhangMm, dimensions);
  }

  /** A reamer, tap, countersink or burnisher: a short lead of its own tip diameter. */
  static ToolOutline led(
      double diameterMm, double tipMm, double leadMm, double usableMm, double overhangMm) {
    return round(
        diameterMm,
        diameterMm,
        leadMm,
        tipMm,
        Math.min(usableMm, overhangMm),
        overhangMm,
        List.of(Dimension.mm("DC", diameterMm)));
  }

  /** A thin tip on a thicker shank. */
  static ToolOutline pointed(
      double tipMm, double shankMm, double coneMm, double overhangMm, List<Dimension> dimensions) {
    return round(shankMm, shankMm, coneMm, tipMm, coneMm + 1, overhangMm, dimensions);
  }

  private static ToolOutline round(
      double diameterMm,
      double shankMm,
      double leadMm,
      double tipMm,
      double usableMm,
      double overhangMm,
      List<Dimension> dimensions) {
    double half = diameterMm / 2;
    double tip = tipMm / 2;
    double edge = Math.max(usableMm, leadMm);
    ToolPart cutting =
        ToolPart.of(
            Role.EDGE, 0, -tip, 0, tip, -leadMm, half, -edge, half, -edge, -half, -leadMm, -half);
    ToolPart nose = TurningOutlines.nose(shankMm, Math.max(overhangMm, edge), 0);
    if (overhangMm <= edge) {
      return new ToolOutline(List.of(nose, cutting), Side.ALONG, dimensions);
    }
    ToolPart shank = ToolPart.box(Role.SHANK, -overhangMm, -edge, -shankMm / 2, shankMm / 2);
    return new ToolOutline(List.of(nose, shank, cutting), Side.ALONG, dimensions);
  }

  /** The same tool standing across the axis, its tip down. */
  static ToolOutline across(ToolOutline along) {
    List<ToolPart> parts =
        along.parts().stream()
            .map(
                part ->
                    new ToolPart(
                        part.role(),
                        part.outline().stream().map(p -> new PointZr(p.rMm(), -p.zMm())).toList()))
            .toList();
    return new ToolOutline(parts, Side.ACROSS, along.dimensions());
  }
}
