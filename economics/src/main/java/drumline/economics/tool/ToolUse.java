package drumline.economics.tool;

import java.math.BigDecimal;

/**
 * How one tool is used up.
 *
 * @param wear its wear
 * @param plan whether it is changed at the common stop
 * @param changedEveryCount pieces between two changes; at a common stop fewer than the edge could
 *     make
 * @param edgesPer1000Count edges for 1000 pieces
 * @param costPerPiece cost of edges for one piece
 * @param changeMinPerPiece minutes of changing for one piece, without stopping and starting again
 */
public record ToolUse(
    ToolWear wear,
    Plan plan,
    long changedEveryCount,
    double edgesPer1000Count,
    BigDecimal costPerPiece,
    double changeMinPerPiece) {

  /** When an edge is changed. */
  public enum Plan {
    /** At a common stop with others. */
    COMMON_STOP,
    /** At a stop of its own, when it is worn. */
    OWN_STOP
  }
}
