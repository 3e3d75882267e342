package drumline.planner.model;

import static drumline.planner.range.Checks.atLeast;
import static drumline.planner.range.Checks.between;

/**
 * The spindle that grips the front of the piece before the cut-off and carries it to the
 * back-working tools. Its round trip, gripMs + cut-off + retractMs + back-working + ejectMs +
 * returnMs, must end within as many cycles as there are pick-up spindles.
 *
 * @param gripMs time to come, match speed and grip before the cut-off begins, 0 or more
 * @param retractMs time to carry the piece away after the cut-off, 0 or more; the spindle takes up
 *     its first back-working condition meanwhile
 * @param ejectMs time to eject the piece, 0 or more
 * @param returnMs time to come back, 0 or more
 * @param spindleCount pick-up spindles that take turns, 1 or 2
 * @param spindle how the pick-up spindle changes what it does; its drive is not read
 */
public record PickUp(
    int gripMs, int retractMs, int ejectMs, int returnMs, int spindleCount, SpindleRules spindle) {
  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if a time is negative or the spindle count is not 1 or 2
   */
  public PickUp {
    atLeast("gripMs", gripMs, 0);
    atLeast("retractMs", retractMs, 0);
    atLeast("ejectMs", ejectMs, 0);
    atLeast("returnMs", returnMs, 0);
    between("spindleCount", spindleCount, 1, 2);
  }

  /** Everything in the round trip but the cut-off and back-working, in ms. */
  public int carryMs() {
    return gripMs + retractMs + ejectMs + returnMs;
  }
}
