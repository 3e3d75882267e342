package drumline.cycle.timeline;

/**
 * A stretch of a tool's time.
 *
 * @param kind what happens
 * @param startS from the end of the index
 * @param endS at least {@code startS}
 */
public record TimeElement(Kind kind, double startS, double endS) {

  /** What a tool does in a stretch of time. */
  public enum Kind {
    /** Rapid to the cut. */
    APPROACH,
    /** Cutting, return strokes included. */
    CUT,
    /** Standing at depth. */
    DWELL,
    /** Rapid away. */
    RETRACT
  }

  /** Length in seconds. */
  public double lengthS() {
    return endS - startS;
  }
}
