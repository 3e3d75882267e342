package drumline.shop.contour;

/**
 * How an edge between two surfaces is finished.
 *
 * @param kind form of the edge
 * @param sizeMm leg of the chamfer along the axis, or the radius, 0 or more
 * @param angleDeg angle of the chamfer against the axis, 45 where nothing is said
 */
public record Edge(Kind kind, double sizeMm, double angleDeg) {

  /** An edge about which the print says nothing. */
  public static final Edge NONE = new Edge(Kind.NONE, 0, 45);

  /** Form of an edge. */
  public enum Kind {
    /** Nothing asked. */
    NONE,
    /** Burr-free, broken a little; no measured form. */
    BREAK,
    /** Straight chamfer. */
    CHAMFER,
    /** Rounded. */
    RADIUS
  }

  /** Depth of the edge across the axis in mm: leg of a chamfer, or the radius. */
  public double radialMm() {
    return kind == Kind.CHAMFER ? sizeMm * Math.tan(Math.toRadians(angleDeg)) : sizeMm;
  }
}
