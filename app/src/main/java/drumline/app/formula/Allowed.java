package drumline.app.formula;

import java.util.function.DoubleFunction;

/**
 * The range that a formula allows for an input, in the formula's unit; NaN is never inside.
 *
 * @param from lower end
 * @param to upper end, infinite for none
 * @param ends which ends belong to the range
 */
public record Allowed(double from, double to, Ends ends) {

  /** Any number. */
  public static final Allowed ANY =
      new Allowed(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Ends.NONE);

  /** A number above 0. */
  public static final Allowed ABOVE_0 = new Allowed(0, Double.POSITIVE_INFINITY, Ends.NONE);

  /** A number of 0 or more. */
  public static final Allowed FROM_0 = new Allowed(0, Double.POSITIVE_INFINITY, Ends.BOTH);

  /** Which ends belong to a range. */
  public enum Ends {
    /** Neither. */
    NONE,
    /** The upper one. */
    UPPER,
    /** Both. */
    BOTH
  }

  /** Both ends inside. */
  public static Allowed between(double from, double to) {
    return new Allowed(from, to, Ends.BOTH);
  }

  /** Above the lower end, up to the upper one. */
  public static Allowed aboveTo(double from, double to) {
    return new Allowed(from, to, Ends.UPPER);
  }

  /** Neither end inside. */
  public static Allowed inside(double from, double to) {
    return new Allowed(from, to, Ends.NONE);
  }

  /** At least so much. */
  public static Allowed atLeast(double from) {
    return new Allowed(from, Double.POSITIVE_INFINITY, Ends.BOTH);
  }

  /** Whether a value is inside; NaN and the infinite are not. */
  public boolean contains(double value) {
    boolean above = ends == Ends.BOTH ? value >= from : value > from;
    boolean below = ends == Ends.NONE ? value < to : value <= to;
    return above && below && Double.isFinite(value);
  }

  /**
   * The range in words.
   *
   * @param shown how a bound is written with its unit
   */
  public String words(DoubleFunction<String> shown) {
    if (to == Double.POSITIVE_INFINITY) {
      return from == Double.NEGATIVE_INFINITY
          ? "any number"
          : ends == Ends.BOTH ? shown.apply(from) + " or more" : "above " + shown.apply(from);
    }
    return switch (ends) {
      case BOTH -> shown.apply(from) + " to " + shown.apply(to);
      case UPPER -> "above " + shown.apply(from) + ", up to " + shown.apply(to);
      case NONE -> "above " + shown.apply(from) + " and below " + shown.apply(to);
    };
  }
}
