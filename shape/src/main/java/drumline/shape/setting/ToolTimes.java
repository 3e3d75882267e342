package drumline.shape.setting;

/**
 * When a tool moves, in seconds from the end of the index; of back-working from the begin of
 * gripping.
 *
 * @param startS begin of the approach
 * @param cutS begin of the cut
 * @param clearS end of cut and dwell, when the tool draws back
 * @param endS end of the retract
 */
public record ToolTimes(double startS, double cutS, double clearS, double endS) {

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException if a time is not a number or lies before the one before it
   */
  public ToolTimes {
    if (!(startS <= cutS && cutS <= clearS && clearS <= endS)) {
      throw new IllegalArgumentException(
          "times: "
              + startS
              + ", "
              + cutS
              + ", "
              + clearS
              + ", "
              + endS
              + ", allowed: each at least the one before it");
    }
  }

  /** Whether both tools are out of their waiting places at one moment. */
  public boolean overlaps(ToolTimes other) {
    return startS < other.endS && other.startS < endS;
  }
}
