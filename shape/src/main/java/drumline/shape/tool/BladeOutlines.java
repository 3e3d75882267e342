package drumline.shape.tool;

import drumline.shape.tool.ToolOutline.Dimension;
import drumline.shape.tool.ToolOutline.Side;
import drumline.shape.tool.ToolPart.Role;
import java.util.List;

/**
 * Blades that plunge: grooving and parting from above, grooving in a bore and in a face.
 *
 * <p>Source: [ISO-13399] names of dimensions (CW cutting width, CDX greatest depth); forms from
 * memory.
 */
final class BladeOutlines {

  private static final double SHANK_MM = 16;

  private BladeOutlines() {}

  /** From above; the cutting point is the corner that looks to the front. */
  static ToolOutline across(double widthMm, double overhangMm) {
    double relief = Math.min(0.15, 0.04 * widthMm);
    double right = widthMm - relief;
    return new ToolOutline(
        List.of(
            ToolPart.box(
                Role.HOLDER, right - SHANK_MM, right, overhangMm, overhangMm + SHANK_MM + 6),
            ToolPart.of(Role.EDGE, 0, 0, widthMm, 0, right, overhangMm, relief, overhangMm)),
        Side.ACROSS,
        List.of(Dimension.mm("CW", widthMm), Dimension.mm("CDX", overhangMm)));
  }

  /** On a round bar in a bore; the cutting point is the outer corner that looks to the front. */
  static ToolOutline inside(double widthMm, double depthMm, double barMm, double overhangMm) {
    return new ToolOutline(
        List.of(
            TurningOutlines.nose(barMm, overhangMm, -depthMm - barMm / 2),
            ToolPart.box(Role.SHANK, -overhangMm, widthMm, -depthMm - barMm, -depthMm),
            ToolPart.box(Role.EDGE, 0, widthMm, -depthMm, 0)),
        Side.ALONG,
        List.of(
            Dimension.mm("CW", widthMm), Dimension.mm("CDX", depthMm), Dimension.mm("DMM", barMm)));
  }

  /** Facing the work; the cutting point is the inner corner. */
  static ToolOutline face(double widthMm, double overhangMm) {
    return new ToolOutline(
        List.of(
            ToolPart.box(Role.HOLDER, -overhangMm - SHANK_MM - 6, -overhangMm, -1, SHANK_MM - 1),
            ToolPart.box(Role.EDGE, -overhangMm, 0, 0, widthMm)),
        Side.ALONG,
        List.of(Dimension.mm("CW", widthMm), Dimension.mm("CDX", overhangMm)));
  }

  /** A bar whose end cuts by strokes along the axis. */
  static ToolOutline slotting(double widthMm, double radialMm, double barMm, double overhangMm) {
    double neck = Math.max(1, radialMm + 0.5);
    return new ToolOutline(
        List.of(
            TurningOutlines.nose(barMm, overhangMm, -neck - barMm / 2),
            ToolPart.box(Role.SHANK, -overhangMm, -0.5, -neck - barMm, -neck),
            ToolPart.of(Role.EDGE, 0, 0, -0.3, -neck, -4, -neck, -3, 0)),
        Side.ALONG,
        List.of(Dimension.mm("CW", widthMm), Dimension.mm("DMM", barMm)));
  }
}
