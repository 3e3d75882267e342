package drumline.drawing.view;

import drumline.drawing.svg.SvgPath;
import drumline.drawing.svg.SvgPen;

/**
 * A filled arrow head at the end of a line, an angle of 20° between its sides.
 *
 * <p>Source: [ISO-129-1] terminators (from memory).
 */
public final class Arrow {

  private static final double LENGTH_MM = 2;
  private static final double HALF_WIDTH_RATIO = Math.tan(Math.toRadians(10));

  private Arrow() {}

  /** Draws the head at the end of a line. */
  public static void draw(SvgPen pen, double fromX, double fromY, double tipX, double tipY) {
    double distance = Math.hypot(tipX - fromX, tipY - fromY);
    if (distance < 1e-6) {
      return;
    }
    double length = Math.min(LENGTH_MM, Math.max(1, distance * 0.7));
    double ux = (tipX - fromX) / distance;
    double uy = (tipY - fromY) / distance;
    double half = length * HALF_WIDTH_RATIO;
    double backX = tipX - ux * length;
    double backY = tipY - uy * length;
    SvgPath head = new SvgPath().move(tipX, tipY);
    head.line(backX - uy * half, backY + ux * half);
    head.line(backX + uy * half, backY - ux * half).close();
    pen.path("arrow", head);
  }
}
