package drumline.planner.tables;

/** Everything that follows from the order rules: before the one before is before. */
final class OrderClosure {
  private OrderClosure() {}

  static boolean[][] of(int taskCount, ProblemTables.Arc[] arcs) {
    boolean[][] precedes = new boolean[taskCount][taskCount];
    for (ProblemTables.Arc arc : arcs) {
      precedes[arc.before()][arc.after()] = true;
    }
    for (int via = 0; via < taskCount; via++) {
      for (int a = 0; a < taskCount; a++) {
        if (precedes[a][via]) {
          for (int b = 0; b < taskCount; b++) {
            precedes[a][b] |= precedes[via][b];
          }
        }
      }
    }
    return precedes;
  }
}
