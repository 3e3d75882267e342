package drumline.planner.model;

import static drumline.planner.range.Checks.atLeast;

/**
 * One way of doing a task: spindle condition, speed, time and loads.
 *
 * @param condition what the spindle does
 * @param revPerMin spindle speed, 0 or more; 0 where the spindle stands still, not read for {@link
 *     SpindleCondition#ANY}
 * @param durationMs time from start to end, 1 or more
 * @param spindleSharePermille share of the spindle's limit (power or torque, the tighter) in use, 0
 *     or more; above 1000 the mode cannot be used
 * @param gripSharePermille share of the collet's grip in use, 0 or more; above 1000 the mode cannot
 *     be used
 * @param end where the mode can be used
 * @param holdAngle key of the angle at which the spindle is held, empty if of no interest; two held
 *     tasks with the same key can work together where the spindle rules allow it
 */
public record Mode(
    SpindleCondition condition,
    int revPerMin,
    int durationMs,
    int spindleSharePermille,
    int gripSharePermille,
    End end,
    String holdAngle) {

  /** Where a mode of a task can be used. */
  public enum End {
    /** On the spindle drum's slides. */
    DRUM,
    /** On the back-working slides, with the piece in the pick-up spindle. */
    BACK,
    /** On either. */
    EITHER;

    /** True if a mode for this end can be used in the drum, or else in the pick-up spindle. */
    public boolean allows(boolean inDrum) {
      return this == EITHER || (this == DRUM) == inDrum;
    }
  }

  /** The most a shared load may add up to. */
  public static final int FULL_PERMILLE = 1000;

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if the duration is below 1, another number is negative, or a
   *     standing spindle has a speed
   */
  public Mode {
    atLeast("revPerMin", revPerMin, 0);
    atLeast("durationMs", durationMs, 1);
    atLeast("spindleSharePermille", spindleSharePermille, 0);
    atLeast("gripSharePermille", gripSharePermille, 0);
    if (condition.standsStill() && revPerMin != 0) {
      throw new IllegalArgumentException(
          "revPerMin is " + revPerMin + ", allowed for a standing spindle: 0");
    }
  }

  /** Turning at a speed, no loads. */
  public static Mode turning(int revPerMin, int durationMs) {
    return new Mode(SpindleCondition.TURNING, revPerMin, durationMs, 0, 0, End.EITHER, "");
  }

  /** Spindle held, no loads. */
  public static Mode held(int durationMs) {
    return new Mode(SpindleCondition.HELD, 0, durationMs, 0, 0, End.EITHER, "");
  }

  /** Spindle as a controlled axis, no loads. */
  public static Mode cAxis(int durationMs) {
    return new Mode(SpindleCondition.C_AXIS, 0, durationMs, 0, 0, End.EITHER, "");
  }

  /** Any spindle condition, no loads. */
  public static Mode any(int durationMs) {
    return new Mode(SpindleCondition.ANY, 0, durationMs, 0, 0, End.EITHER, "");
  }

  /** The same with other loads. */
  public Mode withShares(int newSpindleSharePermille, int newGripSharePermille) {
    return new Mode(
        condition,
        revPerMin,
        durationMs,
        newSpindleSharePermille,
        newGripSharePermille,
        end,
        holdAngle);
  }

  /** The same, for one end only. */
  public Mode withEnd(End newEnd) {
    return new Mode(
        condition,
        revPerMin,
        durationMs,
        spindleSharePermille,
        gripSharePermille,
        newEnd,
        holdAngle);
  }

  /** The same, held at a named angle. */
  public Mode withHoldAngle(String newHoldAngle) {
    return new Mode(
        condition,
        revPerMin,
        durationMs,
        spindleSharePermille,
        gripSharePermille,
        end,
        newHoldAngle);
  }

  /** True if no spindle or collet can take the mode, even alone. */
  public boolean isOverloaded() {
    return spindleSharePermille > FULL_PERMILLE || gripSharePermille > FULL_PERMILLE;
  }
}
