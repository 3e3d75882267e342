package drumline.planner.api;

import drumline.planner.tables.ProblemTables;
import java.util.stream.IntStream;

/** Whether tasks have any place left. */
final class Places {
  private Places() {}

  static boolean everyTaskHasOne(ProblemTables tables) {
    return IntStream.range(0, tables.taskCount)
        .allMatch(i -> IntStream.range(0, tables.stageCount).anyMatch(k -> tables.canStand(i, k)));
  }
}
