package drumline.cutting.force;

/**
 * State of the cutting edge, and the factor Kver by which it raises the force.
 *
 * <p>Source: [TSCH] Dietrich and Tschätsch, 11th edition: 30 % more at the end of tool life, up to
 * 50 %.
 */
public enum EdgeWear {
  /** Sharp. */
  FRESH(1.0),
  /** At its normal end of life. */
  WORN(1.3),
  /** Run beyond it. */
  OVERRUN(1.5);

  private final double ratio;

  EdgeWear(double ratio) {
    this.ratio = ratio;
  }

  /** Factor Kver. */
  public double ratio() {
    return ratio;
  }
}
