package drumline.economics;

import java.math.BigDecimal;

/** Refuses values for which a formula has no answer. */
public final class Range {
  private Range() {}

  /**
   * The value itself.
   *
   * @throws IllegalArgumentException if it is not a finite number above 0
   */
  public static double positive(String name, double valueRatio) {
    if (!(valueRatio > 0) || Double.isInfinite(valueRatio)) {
      throw new IllegalArgumentException(name + ": " + valueRatio + ", allowed: above 0");
    }
    return valueRatio;
  }

  /**
   * The value itself.
   *
   * @throws IllegalArgumentException if it is not a finite number of 0 or more
   */
  public static double notNegative(String name, double valueRatio) {
    if (!(valueRatio >= 0) || Double.isInfinite(valueRatio)) {
      throw new IllegalArgumentException(name + ": " + valueRatio + ", allowed: 0 or more");
    }
    return valueRatio;
  }

  /**
   * The amount itself.
   *
   * @throws IllegalArgumentException if it is below 0
   */
  public static BigDecimal notNegative(String name, BigDecimal amount) {
    if (amount.signum() < 0) {
      throw new IllegalArgumentException(name + ": " + amount + ", allowed: 0 or more");
    }
    return amount;
  }

  /**
   * The share itself, which something may lose without losing all: 0 or more and below 100.
   *
   * @throws IllegalArgumentException if it is outside
   */
  public static double lossPct(String name, double sharePct) {
    if (!(sharePct >= 0 && sharePct < 100)) {
      throw new IllegalArgumentException(
          name + ": " + sharePct + ", allowed: 0 or more and below 100 %");
    }
    return sharePct;
  }

  /**
   * The share itself, of which something must be left: above 0 and at most 100.
   *
   * @throws IllegalArgumentException if it is outside
   */
  public static double usablePct(String name, double sharePct) {
    if (!(sharePct > 0 && sharePct <= 100)) {
      throw new IllegalArgumentException(
          name + ": " + sharePct + ", allowed: above 0 and at most 100 %");
    }
    return sharePct;
  }
}
