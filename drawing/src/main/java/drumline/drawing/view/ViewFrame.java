package drumline.drawing.view;

/**
 * Where a piece stands on the sheet; its front face is at the left, its collet side at the right.
 *
 * @param x0 sheet x of z = 0
 * @param axisY sheet y of the axis
 * @param scale sheet units for one mm of the piece
 */
public record ViewFrame(double x0, double axisY, double scale) {

  /** Sheet x of a place along the axis. */
  public double x(double zMm) {
    return x0 + zMm * scale;
  }

  /** Sheet y of a radius in the upper half. */
  public double up(double rMm) {
    return axisY - rMm * scale;
  }

  /** Sheet y of a radius in the lower half. */
  public double down(double rMm) {
    return axisY + rMm * scale;
  }
}
