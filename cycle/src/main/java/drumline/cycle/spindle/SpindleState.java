package drumline.cycle.spindle;

import drumline.shop.operation.Operation;
import drumline.shop.operation.SpindleCondition;

/**
 * What a work spindle does at a moment.
 *
 * @param condition turning, held, or moved as a controlled axis
 * @param revPerMin speed, 0 or more; 0 where the spindle stands or is a controlled axis
 */
public record SpindleState(SpindleCondition condition, double revPerMin) {

  /**
   * Checks the number.
   *
   * @throws IllegalArgumentException if the speed is negative or NaN, 0 for a condition that turns
   *     at the cutting speed, or not 0 for one that stands
   */
  public SpindleState {
    RangeCheck.notNegative("revPerMin", revPerMin);
    if (condition == SpindleCondition.TURNING && revPerMin == 0) {
      throw new IllegalArgumentException("revPerMin is 0, allowed while turning: above 0");
    }
    if (stands(condition) && revPerMin != 0) {
      throw new IllegalArgumentException(
          "revPerMin is " + revPerMin + ", allowed for a held or controlled spindle: 0");
    }
  }

  /** What the operation asks of the spindle, at a speed that is not read where it stands. */
  public static SpindleState of(Operation operation, double revPerMin) {
    SpindleCondition condition = operation.condition();
    return new SpindleState(condition, stands(condition) ? 0 : revPerMin);
  }

  /** Whether the spindle has stopped turning for the cut. */
  public boolean stands() {
    return stands(condition);
  }

  /** Whether the spindle may turn as others need it. */
  public boolean isFree() {
    return condition == SpindleCondition.TURNING_ANY;
  }

  /**
   * Whether cuts in both states can run at the same moment at one spindle: turning at one speed, or
   * either free while the other turns. Nothing else cuts while the spindle is held or controlled.
   */
  public boolean agreesWith(SpindleState other) {
    if (stands() || other.stands()) {
      return false;
    }
    return isFree() || other.isFree() || revPerMin == other.revPerMin;
  }

  private static boolean stands(SpindleCondition condition) {
    return condition == SpindleCondition.HELD || condition == SpindleCondition.C_AXIS;
  }
}
