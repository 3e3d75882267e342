package drumline.planner.balance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds tasks that wait for one another in a circle. */
public final class TaskCircle {
  private final Map<String, BalanceTask> tasks = new HashMap<>();
  private final Set<String> cleared = new HashSet<>();
  private final List<String> path = new ArrayList<>();

  private TaskCircle(List<BalanceTask> list) {
    list.forEach(t -> tasks.put(t.id(), t));
  }

  /** The ids of one circle, the first repeated at the end; empty if there is none. */
  public static List<String> find(List<BalanceTask> list) {
    TaskCircle circle = new TaskCircle(list);
    for (BalanceTask task : list) {
      List<String> found = circle.walk(task.id());
      if (!found.isEmpty()) {
        return found;
      }
    }
    return List.of();
  }

  private List<String> walk(String id) {
    int at = path.indexOf(id);
    if (at >= 0) {
      List<String> circle = new ArrayList<>(path.subList(at, path.size()));
      circle.add(id);
      java.util.Collections.reverse(circle);
      return circle;
    }
    BalanceTask task = tasks.get(id);
    if (task == null || cleared.contains(id)) {
      return List.of();
    }
    path.add(id);
    for (String before : task.predecessorIds()) {
      List<String> found = walk(before);
      if (!found.isEmpty()) {
        return found;
      }
    }
    path.remove(path.size() - 1);
    cleared.add(id);
    return List.of();
  }
}
