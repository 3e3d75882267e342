package drumline.planner.model;

import java.util.List;
import java.util.Optional;

/**
 * The route given places.
 *
 * @param placements one for each task, in the problem's order
 * @param cycleMs cycle time with the index: the longer of the latest end in the drum + index, and
 *     the pick-up spindle's round trip for each cycle it may take
 */
public record Layout(List<Placement> placements, int cycleMs) {
  /**
   * Where and when a task runs.
   *
   * @param taskId the task
   * @param slideId its slide
   * @param modeIndex index into the task's modes
   * @param startMs start after the index, or after the pick-up spindle has retracted for
   *     back-working
   * @param endMs end, on the same clock
   */
  public record Placement(String taskId, String slideId, int modeIndex, int startMs, int endMs) {}

  /** Copies the list. */
  public Layout {
    placements = List.copyOf(placements);
  }

  /** The placement of a task, if it has one. */
  public Optional<Placement> findPlacement(String taskId) {
    return placements.stream().filter(p -> p.taskId().equals(taskId)).findFirst();
  }

  /**
   * The placement of a task.
   *
   * @throws IllegalArgumentException if the task has none
   */
  public Placement placement(String taskId) {
    return findPlacement(taskId)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "taskId is " + taskId + ", allowed: a task of this layout"));
  }
}
