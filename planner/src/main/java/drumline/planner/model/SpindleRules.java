package drumline.planner.model;

import static drumline.planner.range.Checks.atLeast;

/**
 * How work spindles change what they do.
 *
 * @param runUpRevPerMinPerS change of speed in each second, 0 or more; 0 leaves run-up out of
 *     account
 * @param orientMs time to stop at an angle or take up C-axis control once the spindle stands, 0 or
 *     more
 * @param topRevPerMin speed from which the spindle may have to come down to the first task's, 0 or
 *     more
 * @param drive whether each position has its own speed
 * @param heldWork whether held tasks at the same angle can work together
 */
public record SpindleRules(
    int runUpRevPerMinPerS, int orientMs, int topRevPerMin, Drive drive, HeldWork heldWork) {

  /** Speeds of the positions. */
  public enum Drive {
    /** Each position turns at its own speed. */
    INDEPENDENT,
    /** One speed for all turning tasks in all positions of the drum. */
    COMMON_SPEED
  }

  /** Held tasks in one position. */
  public enum HeldWork {
    /** One after the other. */
    ALONE,
    /** Together if they hold the same angle. */
    SAME_ANGLE_TOGETHER
  }

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if a number is negative
   */
  public SpindleRules {
    atLeast("runUpRevPerMinPerS", runUpRevPerMinPerS, 0);
    atLeast("orientMs", orientMs, 0);
    atLeast("topRevPerMin", topRevPerMin, 0);
  }

  /** Independent spindles whose changes take no time, held tasks alone. */
  public static SpindleRules instant() {
    return new SpindleRules(0, 0, 0, Drive.INDEPENDENT, HeldWork.ALONE);
  }

  /** True if two modes can be in cut at the same moment in one position. */
  public boolean canOverlap(Mode first, Mode second) {
    SpindleCondition a = first.condition();
    SpindleCondition b = second.condition();
    if (a == SpindleCondition.TURNING && b == SpindleCondition.TURNING) {
      return first.revPerMin() == second.revPerMin();
    }
    if (a == SpindleCondition.HELD && b == SpindleCondition.HELD) {
      return heldWork == HeldWork.SAME_ANGLE_TOGETHER
          && !first.holdAngle().isEmpty()
          && first.holdAngle().equals(second.holdAngle());
    }
    return (a == SpindleCondition.ANY || a == SpindleCondition.TURNING)
        && (b == SpindleCondition.ANY || b == SpindleCondition.TURNING);
  }

  /**
   * Time between the end of one mode and the start of a later one in the same position, in ms:
   * ⌈|n_a − n_b| / runUp · 1000⌉ with n = 0 for a standing spindle, plus orientMs when the spindle
   * comes from turning to stand; 0 if either is {@link SpindleCondition#ANY}.
   */
  public int changeMs(Mode earlier, Mode later) {
    if (earlier.condition() == SpindleCondition.ANY || later.condition() == SpindleCondition.ANY) {
      return 0;
    }
    boolean stops = later.condition().standsStill() && !earlier.condition().standsStill();
    return runUpMs(Math.abs(earlier.revPerMin() - later.revPerMin())) + (stops ? orientMs : 0);
  }

  /**
   * Time to reach a mode from standstill or from top speed, the longer, in ms, plus orientMs for a
   * standing spindle; 0 for {@link SpindleCondition#ANY}.
   */
  public int reachMs(Mode mode) {
    if (mode.condition() == SpindleCondition.ANY) {
      return 0;
    }
    int n = mode.revPerMin();
    int change = Math.max(n, topRevPerMin - n);
    return runUpMs(change) + (mode.condition().standsStill() ? orientMs : 0);
  }

  private int runUpMs(int changeRevPerMin) {
    if (runUpRevPerMinPerS == 0) {
      return 0;
    }
    return Math.toIntExact(-Math.floorDiv(-changeRevPerMin * 1000L, (long) runUpRevPerMinPerS));
  }
}
