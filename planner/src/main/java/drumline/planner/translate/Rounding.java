package drumline.planner.translate;

/** The one place where shop numbers become whole ones. */
final class Rounding {
  /** What a sum of floating-point numbers may be above a whole number by error alone. */
  private static final double ERROR = 1e-6;

  private Rounding() {}

  /** Whole milliseconds, up. */
  static int ms(double timeS) {
    return Math.toIntExact((long) Math.ceil(timeS * 1000 - ERROR));
  }

  /** Whole permille, up. */
  static int permille(double shareRatio) {
    return Math.toIntExact((long) Math.ceil(shareRatio * 1000 - ERROR));
  }

  /** Whole rev/min, down. */
  static int revPerMin(double speedRevPerMin) {
    return (int) Math.floor(speedRevPerMin + ERROR);
  }
}
