package drumline.planner.model;

import static drumline.planner.range.Checks.atLeast;
import static drumline.planner.range.Checks.notBlank;

/**
 * A tool slide: it does one thing at a time.
 *
 * @param id unique name
 * @param position 1…N in the drum, N + 1 for a slide beside the pick-up spindle
 * @param seatCount most tasks on the slide, one tool each, 0 or more
 * @param toolShiftMs time between the end of one task on the slide and the start of the next, 0 or
 *     more
 */
public record Slide(String id, int position, int seatCount, int toolShiftMs) {
  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if the id is blank, the position below 1, or seats or shift
   *     negative
   */
  public Slide {
    notBlank("id", id);
    atLeast("position", position, 1);
    atLeast("seatCount", seatCount, 0);
    atLeast("toolShiftMs", toolShiftMs, 0);
  }
}
