package drumline.planner.bound;

import drumline.planner.tables.ProblemTables;

/**
 * Tasks that follow one another, each between its neighbours: a chain whose tasks can stand in
 * stages f…l only, l − f + 1 of them, needs at least its whole time divided by that number.
 */
final class ChainLoad {
  private ChainLoad() {}

  static int boundMs(ProblemTables tables) {
    int best = 0;
    for (int first = 0; first < tables.drumCount; first++) {
      for (int last = first; last < tables.drumCount; last++) {
        long chain = longestChain(tables, first, last);
        best = Math.max(best, CycleBound.ceilDiv(chain, last - first + 1L));
      }
    }
    return best == 0 ? 0 : best + tables.problem.indexMs();
  }

  private static long longestChain(ProblemTables tables, int first, int last) {
    long longest = 0;
    long[] chain = new long[tables.taskCount];
    boolean[] known = new boolean[tables.taskCount];
    for (int i = 0; i < tables.taskCount; i++) {
      longest = Math.max(longest, chainTo(tables, i, first, last, chain, known));
    }
    return longest;
  }

  private static long chainTo(
      ProblemTables tables, int task, int first, int last, long[] chain, boolean[] known) {
    if (known[task]) {
      return chain[task];
    }
    known[task] = true;
    long before = 0;
    for (ProblemTables.Arc arc : tables.arcs) {
      if (arc.after() == task) {
        before = Math.max(before, chainTo(tables, arc.before(), first, last, chain, known));
      }
    }
    boolean inside = tables.windows[task].first() >= first && tables.windows[task].last() <= last;
    chain[task] = before + (inside ? tables.shortestMs(task) : 0);
    return chain[task];
  }
}
