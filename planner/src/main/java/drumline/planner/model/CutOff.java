package drumline.planner.model;

import static drumline.planner.range.Checks.atLeast;

import java.util.List;

/**
 * The task that parts the piece from the bar, in the last position of the drum.
 *
 * @param taskId the cut-off
 * @param barFeedMs time to feed the bar out after it, before the index, 0 or more
 * @param overlapTaskIds tasks that may be in cut during the cut-off and end with it at the latest;
 *     all others in the last position end before it begins
 */
public record CutOff(String taskId, int barFeedMs, List<String> overlapTaskIds) {
  /**
   * Checks the numbers and copies the list.
   *
   * @throws IllegalArgumentException if the bar feed time is negative
   */
  public CutOff {
    atLeast("barFeedMs", barFeedMs, 0);
    overlapTaskIds = List.copyOf(overlapTaskIds);
  }
}
