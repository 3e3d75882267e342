package drumline.step.turned;

/** How near two things must be to count as the same. */
public final class Near {
  /** Places and sizes, in mm: coarser than any exporter's own tolerance, finer than a print. */
  public static final double MM = 0.005;

  /** Directions, in radians. */
  public static final double RAD = 1e-3;

  private Near() {}

  /** Whether two lengths are the same. */
  public static boolean isSame(double aMm, double bMm) {
    return Math.abs(aMm - bMm) <= MM;
  }
}
