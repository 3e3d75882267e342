package drumline.planner.bound;

import drumline.planner.tables.ProblemTables;

/**
 * All work of the drum less the most its pairs can save, shared evenly among positions: ⌈(Σ D_i − ½
 * Σ min(D_i, Σ_j saving_ij)) / N⌉. Half, because each pair is counted from both sides. Left at 0
 * where three or more slides work in one position.
 */
final class DrumLoad {
  private DrumLoad() {}

  static int boundMs(ProblemTables tables) {
    PairSavings savings = new PairSavings(tables);
    for (int k = 0; k < tables.drumCount; k++) {
      if (savings.slidesIn(k) > 2) {
        return 0;
      }
    }
    double work = 0;
    double saved = 0;
    for (int i = 0; i < tables.taskCount; i++) {
      if (CycleBound.drumOnly(tables, i)) {
        work += tables.shortestMs(i);
      }
      saved += Math.min(tables.shortestMs(i), savedWith(tables, savings, i));
    }
    long left = Math.max(0, (long) Math.ceil(work - saved / 2 - 1e-6));
    return CycleBound.ceilDiv(left, tables.drumCount) + tables.problem.indexMs();
  }

  private static long savedWith(ProblemTables tables, PairSavings savings, int task) {
    long sum = 0;
    for (int j = 0; j < tables.taskCount; j++) {
      int best = 0;
      for (int k = 0; k < tables.drumCount; k++) {
        if (tables.canStand(task, k) && tables.canStand(j, k)) {
          best = Math.max(best, savings.savingMs(task, j, k));
        }
      }
      sum += best;
    }
    return sum;
  }
}
