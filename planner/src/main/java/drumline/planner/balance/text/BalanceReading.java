package drumline.planner.balance.text;

import drumline.planner.balance.BalanceTask;
import drumline.shop.problem.Problem;
import java.util.List;

/**
 * Tasks read from a text, with everything that is wrong with it.
 *
 * @param tasks tasks in the order of the text; not to be used if there are errors
 * @param problems what is wrong
 */
public record BalanceReading(List<BalanceTask> tasks, List<Problem> problems) {
  /** Copies the lists. */
  public BalanceReading {
    tasks = List.copyOf(tasks);
    problems = List.copyOf(problems);
  }

  /** True if the tasks can be shared among stations. */
  public boolean isUsable() {
    return problems.stream().noneMatch(p -> p.severity() == Problem.Severity.ERROR);
  }
}
