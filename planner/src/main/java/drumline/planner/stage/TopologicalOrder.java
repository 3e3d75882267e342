package drumline.planner.stage;

import drumline.planner.tables.ProblemTables;

/** Tasks in an order in which each comes after all that it follows. */
final class TopologicalOrder {
  private TopologicalOrder() {}

  static int[] of(ProblemTables tables) {
    int n = tables.taskCount;
    int[] order = new int[n];
    boolean[] taken = new boolean[n];
    for (int p = 0; p < n; p++) {
      int next = 0;
      while (taken[next] || waits(tables, next, taken)) {
        next++;
      }
      taken[next] = true;
      order[p] = next;
    }
    return order;
  }

  private static boolean waits(ProblemTables tables, int task, boolean[] taken) {
    for (int i = 0; i < tables.taskCount; i++) {
      if (!taken[i] && tables.precedes[i][task]) {
        return true;
      }
    }
    return false;
  }
}
