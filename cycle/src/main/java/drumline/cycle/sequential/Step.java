package drumline.cycle.sequential;

/**
 * One thing that a machine without a drum does at one of its spindles.
 *
 * @param kind what it is
 * @param title in words, e.g. {@code next tool} or the operation's title
 * @param operationId the operation that it belongs to, or empty
 * @param startS begin, from the begin of the spindle's first step
 * @param endS end, at least {@code startS}
 */
public record Step(Kind kind, String title, String operationId, double startS, double endS) {

  /** What can fill a spindle's time. */
  public enum Kind {
    /** The next tool comes while the spindle changes its speed. */
    CHANGE,
    /** A tool goes to the work, cuts and leaves it. */
    OPERATION,
    /** The piece is gripped, parted, carried or put out; the bar is fed. */
    HANDLING
  }

  /** Length in seconds. */
  public double lengthS() {
    return endS - startS;
  }
}
