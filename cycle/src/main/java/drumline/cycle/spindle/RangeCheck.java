package drumline.cycle.spindle;

/** Range checks whose message names the number, its value and what is allowed; NaN fails. */
final class RangeCheck {
  private RangeCheck() {}

  static void positive(String name, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          name + " is " + value + ", allowed: a finite number above 0");
    }
  }

  static void notNegative(String name, double value) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          name + " is " + value + ", allowed: a finite number of 0 or more");
    }
  }
}
