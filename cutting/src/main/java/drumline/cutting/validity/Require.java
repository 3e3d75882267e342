package drumline.cutting.validity;

/**
 * Refuses a caller's impossible argument with its name, its value and the allowed range; NaN and
 * infinity are always refused.
 *
 * <p>Source: none, these are the argument checks of this module.
 */
public final class Require {
  private Require() {}

  /**
   * Refuses anything that is not a finite number above zero.
   *
   * @throws IllegalArgumentException if value is NaN, infinite, zero or negative
   */
  public static void positive(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw refusal(name, value, "a finite number above 0");
    }
  }

  /**
   * Refuses anything that is not a finite number of zero or more.
   *
   * @throws IllegalArgumentException if value is NaN, infinite or negative
   */
  public static void notNegative(String name, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw refusal(name, value, "a finite number of at least 0");
    }
  }

  /**
   * Refuses anything outside the closed range from … to.
   *
   * @throws IllegalArgumentException if value is NaN, below from or above to
   */
  public static void between(String name, double value, double from, double to) {
    if (!(value >= from && value <= to) || Double.isInfinite(value)) {
      throw refusal(name, value, "from " + text(from) + " to " + text(to));
    }
  }

  /**
   * Refuses anything outside the open range from … to.
   *
   * @throws IllegalArgumentException if value is NaN, at or below from, or at or above to
   */
  public static void inside(String name, double value, double from, double to) {
    if (!(value > from && value < to)) {
      throw refusal(name, value, "above " + text(from) + " and below " + text(to));
    }
  }

  /**
   * Refuses a count below the least one.
   *
   * @throws IllegalArgumentException if value is below least
   */
  public static void atLeast(String name, int value, int least) {
    if (value < least) {
      throw refusal(name, value, "a whole number of at least " + least);
    }
  }

  private static IllegalArgumentException refusal(String name, double value, String allowed) {
    return new IllegalArgumentException(
        name + " is " + text(value) + "; allowed is " + allowed + ".");
  }

  private static String text(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }
}
