package drumline.intake.form;

/**
 * What a number may be, both bounds included unless the lower one is open.
 *
 * @param low least value
 * @param lowOpen whether the least value itself is not allowed
 * @param high greatest value
 */
public record Range(double low, boolean lowOpen, double high) {

  /** More than 0. */
  public static final Range POSITIVE = new Range(0, true, Double.MAX_VALUE);

  /** 0 or more. */
  public static final Range NOT_NEGATIVE = new Range(0, false, Double.MAX_VALUE);

  /** Any finite number. */
  public static final Range ANY = new Range(-Double.MAX_VALUE, false, Double.MAX_VALUE);

  /** From one value to another, both included. */
  public static Range between(double low, double high) {
    return new Range(low, false, high);
  }

  /** Above 0 up to a value, included. */
  public static Range above0To(double high) {
    return new Range(0, true, high);
  }

  /** Whether a value is allowed; NaN never is. */
  public boolean holds(double value) {
    return (lowOpen ? value > low : value >= low) && value <= high;
  }

  /** The range in words, e.g. {@code more than 0 mm}. */
  public String words(String unit) {
    String tail = unit.isEmpty() ? "" : " " + unit;
    String from = (lowOpen ? "more than " : "") + Plain.number(low);
    if (high == Double.MAX_VALUE) {
      return from + tail + (lowOpen ? "" : " or more");
    }
    return from + (lowOpen ? " up to " : " to ") + Plain.number(high) + tail;
  }
}
