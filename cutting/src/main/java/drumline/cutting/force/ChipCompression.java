package drumline.cutting.force;

/**
 * Kind of cut, and the factor Kst by which its crowded chip raises the force against outside
 * turning.
 *
 * <p>Source: [TSCH] Dietrich and Tschätsch, 11th edition, for milling; the others from memory
 * (handbooks in German).
 */
public enum ChipCompression {
  /** Outside turning and facing. */
  OUTSIDE_TURNING(1.0),
  /** Inside turning, boring. */
  INSIDE_TURNING(1.2),
  /** Drilling, enlarging, countersinking. */
  DRILLING(1.2),
  /** Milling. */
  MILLING(1.2),
  /** Grooving, recessing, cut-off, form tools. */
  GROOVING(1.3),
  /** Slotting and broaching. */
  SLOTTING(1.1);

  private final double ratio;

  ChipCompression(double ratio) {
    this.ratio = ratio;
  }

  /** Factor Kst. */
  public double ratio() {
    return ratio;
  }
}
