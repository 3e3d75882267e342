package drumline.planner.published;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.planner.balance.BalanceProblem;
import drumline.planner.balance.BalanceResult;
import drumline.planner.balance.BalanceTask;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** An independent look at tasks shared among stations. */
final class SharingCheck {
  private SharingCheck() {}

  static void check(BalanceProblem problem, BalanceResult result) {
    List<BalanceTask> tasks = problem.tasks();
    assertThat(result.stationOf()).hasSameSizeAs(tasks);
    Map<String, Integer> station = new HashMap<>();
    int[] load = new int[problem.stationCount() + 1];
    for (int i = 0; i < tasks.size(); i++) {
      int at = result.stationOf().get(i);
      assertThat(at).isBetween(1, problem.stationCount());
      station.put(tasks.get(i).id(), at);
      load[at] += tasks.get(i).durationMs();
    }
    for (BalanceTask task : tasks) {
      for (String before : task.predecessorIds()) {
        assertThat(station.get(before)).isLessThanOrEqualTo(station.get(task.id()));
      }
    }
    int longest = 0;
    for (int time : load) {
      longest = Math.max(longest, time);
    }
    assertThat(result.cycleMs()).isEqualTo(longest);
    assertThat(result.lowerBoundMs()).isLessThanOrEqualTo(longest);
  }
}
