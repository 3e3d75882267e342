package drumline.drawing.svg;

/**
 * A rectangle on the sheet, y down.
 *
 * @param x left
 * @param y top
 * @param width width, 0 or more
 * @param height height, 0 or more
 */
public record Box(double x, double y, double width, double height) {

  /** Right side. */
  public double right() {
    return x + width;
  }

  /** Lower side. */
  public double bottom() {
    return y + height;
  }

  /** Whether the two share an area. */
  public boolean overlaps(Box other) {
    return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
  }

  /** Whether the other lies in this, sides included, within a millionth. */
  public boolean contains(Box other) {
    double room = 1e-6;
    return other.x >= x - room
        && other.y >= y - room
        && other.right() <= right() + room
        && other.bottom() <= bottom() + room;
  }

  /** The same with its sides moved inwards. */
  public Box inset(double by) {
    return new Box(x + by, y + by, Math.max(0, width - 2 * by), Math.max(0, height - 2 * by));
  }
}
