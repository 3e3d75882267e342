package drumline.planner.model;

import static drumline.planner.range.Checks.atLeast;

/**
 * One task must be finished before another begins.
 *
 * @param beforeId task that comes first
 * @param afterId task that follows
 * @param sharing whether both may stand in one position
 * @param lagMs time between them where they share a position, 0 or more
 * @param reason why, in shop words; may be empty
 */
public record Precedence(
    String beforeId, String afterId, Sharing sharing, int lagMs, String reason) {

  /** Whether a task may stand in the same position as the one it follows. */
  public enum Sharing {
    /** In the same position, one after the other, on any slides. */
    ANY_SLIDE,
    /** In the same position only on the same slide. */
    SAME_SLIDE,
    /** Never in the same position. */
    LATER_POSITION
  }

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if the lag is negative
   */
  public Precedence {
    atLeast("lagMs", lagMs, 0);
  }

  /** May share a position on any slides, without a pause. */
  public static Precedence of(String beforeId, String afterId) {
    return new Precedence(beforeId, afterId, Sharing.ANY_SLIDE, 0, "");
  }

  /** The same for other sharing. */
  public Precedence withSharing(Sharing newSharing) {
    return new Precedence(beforeId, afterId, newSharing, lagMs, reason);
  }
}
