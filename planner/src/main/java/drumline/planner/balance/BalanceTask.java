package drumline.planner.balance;

import java.util.List;

/**
 * A task with a known time.
 *
 * @param id unique name
 * @param durationMs time, 0 or more; any other whole unit will do, and the answer is in the same
 * @param predecessorIds tasks that must be done before, in an earlier station or the same one
 */
public record BalanceTask(String id, int durationMs, List<String> predecessorIds) {
  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException if the time is negative
   */
  public BalanceTask {
    if (durationMs < 0) {
      throw new IllegalArgumentException("durationMs is " + durationMs + ", allowed: 0 or more");
    }
    predecessorIds = List.copyOf(predecessorIds);
  }
}
