package drumline.planner.balance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Tasks to be shared among stations so that the fullest station is as short as can be.
 *
 * @param tasks tasks with their times and predecessors
 * @param stationCount stations in a row, 1 or more
 */
public record BalanceProblem(List<BalanceTask> tasks, int stationCount) {
  /**
   * Copies the list and checks it.
   *
   * @throws IllegalArgumentException if the station count is below 1, an id is used twice or
   *     unknown, or tasks wait for one another in a circle
   */
  public BalanceProblem {
    tasks = List.copyOf(tasks);
    if (stationCount < 1) {
      throw new IllegalArgumentException(
          "stationCount is " + stationCount + ", allowed: 1 or more");
    }
    Map<String, Integer> index = new HashMap<>();
    for (BalanceTask task : tasks) {
      if (index.put(task.id(), index.size()) != null) {
        throw new IllegalArgumentException("tasks has " + task.id() + " twice, allowed: once");
      }
    }
    for (BalanceTask task : tasks) {
      for (String id : task.predecessorIds()) {
        if (!index.containsKey(id)) {
          throw new IllegalArgumentException(
              "predecessorIds of " + task.id() + " has " + id + ", allowed: the id of a task");
        }
      }
    }
    List<String> circle = TaskCircle.find(tasks);
    if (!circle.isEmpty()) {
      throw new IllegalArgumentException(
          "tasks wait for one another: " + circle + ", allowed: no circle");
    }
  }

  /** The same with another number of stations. */
  public BalanceProblem withStationCount(int newStationCount) {
    return new BalanceProblem(tasks, newStationCount);
  }

  /** Times in the order of the tasks, in ms. */
  int[] durationsMs() {
    return tasks.stream().mapToInt(BalanceTask::durationMs).toArray();
  }

  /** Pairs of task indexes, before and after. */
  List<int[]> arcs() {
    Map<String, Integer> index = new HashMap<>();
    tasks.forEach(t -> index.put(t.id(), index.size()));
    List<int[]> arcs = new ArrayList<>();
    for (BalanceTask task : tasks) {
      for (String id : task.predecessorIds()) {
        arcs.add(new int[] {index.getOrDefault(id, 0), index.getOrDefault(task.id(), 0)});
      }
    }
    return arcs;
  }
}
