package drumline.shape.tool;

import drumline.shape.tool.ToolOutline.Dimension;
import drumline.shape.tool.ToolOutline.Side;
import drumline.shape.tool.ToolPart.Role;
import java.util.List;

/** Tools seen on edge: knurling wheels, thread rolls, disc cutters, brushes. Forms from memory. */
final class WheelOutlines {

  private static final double KNURL_MM = 20;
  private static final double ROLL_MM = 32;

  private WheelOutlines() {}

  /** A wheel in a fork from above; the cutting point is the middle of its rim. */
  static ToolOutline knurl(double widthMm) {
    double half = widthMm / 2;
    return new ToolOutline(
        List.of(
            ToolPart.box(Role.HOLDER, -half - 4, half + 4, KNURL_MM * 0.55, KNURL_MM + 16),
            ToolPart.box(Role.EDGE, -half, half, 0, KNURL_MM)),
        Side.ACROSS,
        List.of(Dimension.mm("DC", KNURL_MM)));
  }

  /** The near roll of a pair; its partner stands on the far side. */
  static ToolOutline roll(double widthMm) {
    double half = widthMm / 2;
    return new ToolOutline(
        List.of(
            ToolPart.box(Role.HOLDER, -half - 5, half + 5, ROLL_MM * 0.6, ROLL_MM + 14),
            ToolPart.box(Role.EDGE, -half, half, 0, ROLL_MM)),
        Side.ACROSS,
        List.of(Dimension.mm("DC", ROLL_MM)));
  }

  /** A disc on an arbor that lies along the axis; the cutting point is the middle of its rim. */
  static ToolOutline disc(double widthMm, double diameterMm) {
    double half = widthMm / 2;
    double middle = diameterMm / 2;
    double arbor = Math.max(4, Math.min(10, diameterMm / 6));
    return new ToolOutline(
        List.of(
            ToolPart.box(
                Role.HOLDER, -half - 30, -half - 12, middle - 2 * arbor, middle + 2 * arbor),
            ToolPart.box(Role.SHANK, -half - 12, -half, middle - arbor, middle + arbor),
            ToolPart.box(Role.EDGE, -half, half, 0, diameterMm)),
        Side.ACROSS,
        List.of(Dimension.mm("DC", diameterMm), Dimension.mm("CW", widthMm)));
  }
}
