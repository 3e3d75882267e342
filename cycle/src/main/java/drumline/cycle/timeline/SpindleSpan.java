package drumline.cycle.timeline;

import drumline.shop.operation.SpindleCondition;

/**
 * A stretch of a work spindle's time.
 *
 * @param kind what the spindle does
 * @param condition condition held, or the one it changes to
 * @param revPerMin speed held, or the one it changes to; 0 when held or controlled
 * @param startS from the end of the index
 * @param endS at least {@code startS}
 */
public record SpindleSpan(
    Kind kind, SpindleCondition condition, double revPerMin, double startS, double endS) {

  /** What a spindle does. */
  public enum Kind {
    /** Keeps its condition. */
    KEEP,
    /** Runs up or down, or stops at an angle. */
    CHANGE
  }
}
