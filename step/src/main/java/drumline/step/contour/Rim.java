package drumline.step.contour;

/**
 * Edge at a corner of a contour.
 *
 * @param kind form
 * @param sizeMm leg along the axis, or radius
 * @param angleDeg angle of a chamfer against the axis
 */
public record Rim(Kind kind, double sizeMm, double angleDeg) {

  /** No measured edge. */
  public static final Rim NONE = new Rim(Kind.NONE, 0, 45);

  /** Forms. */
  public enum Kind {
    /** None. */
    NONE,
    /** Straight. */
    CHAMFER,
    /** Round. */
    RADIUS
  }

  /** Whether there is one. */
  public boolean isMeasured() {
    return kind != Kind.NONE;
  }

  /** Leg across the axis. */
  public double radialMm() {
    return kind == Kind.CHAMFER ? sizeMm * Math.tan(Math.toRadians(angleDeg)) : sizeMm;
  }

  @Override
  public String toString() {
    return switch (kind) {
      case NONE -> "none";
      case CHAMFER -> String.format(java.util.Locale.ROOT, "%.3f mm x %.1f°", sizeMm, angleDeg);
      case RADIUS -> String.format(java.util.Locale.ROOT, "R %.3f mm", sizeMm);
    };
  }
}
