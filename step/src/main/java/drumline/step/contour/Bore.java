package drumline.step.contour;

/**
 * A step of a bore, measured from the face it is made from.
 *
 * @param from depth where it begins
 * @param to depth where it ends
 * @param startR radius at its beginning
 * @param endR radius at its end
 * @param mouth edge at its beginning
 * @param bottom how it ends
 */
public record Bore(double from, double to, double startR, double endR, Rim mouth, Bottom bottom) {

  /** How a bore ends. */
  public enum Bottom {
    /** With the cone of a drill. */
    DRILL_POINT,
    /** Square to the axis. */
    FLAT,
    /** Open. */
    THROUGH
  }

  Bore withEnd(double depth, Bottom how) {
    return new Bore(from, depth, startR, endR, mouth, how);
  }

  /** Whether it is a cylinder. */
  public boolean isCylinder() {
    return drumline.step.turned.Near.isSame(startR, endR);
  }
}
