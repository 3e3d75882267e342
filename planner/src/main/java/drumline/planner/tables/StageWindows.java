package drumline.planner.tables;

import drumline.planner.model.Precedence;

/** Earliest and latest stage of each task from its slides and the order rules. */
final class StageWindows {
  private StageWindows() {}

  static ProblemTables.StageWindow[] of(ProblemTables tables) {
    int[] first = new int[tables.taskCount];
    int[] last = new int[tables.taskCount];
    for (int i = 0; i < tables.taskCount; i++) {
      first[i] = tables.stageCount;
      last[i] = -1;
      for (int s : tables.slidesOf[i]) {
        first[i] = Math.min(first[i], tables.stageOfSlide[s]);
        last[i] = Math.max(last[i], tables.stageOfSlide[s]);
      }
    }
    for (int pass = 0; pass <= tables.taskCount && tighten(tables, first, last); pass++) {
      // each pass carries the windows one order rule further
    }
    ProblemTables.StageWindow[] windows = new ProblemTables.StageWindow[tables.taskCount];
    for (int i = 0; i < windows.length; i++) {
      windows[i] = new ProblemTables.StageWindow(first[i], last[i]);
    }
    return windows;
  }

  private static boolean tighten(ProblemTables tables, int[] first, int[] last) {
    boolean changed = false;
    for (ProblemTables.Arc arc : tables.arcs) {
      int step = arc.sharing() == Precedence.Sharing.LATER_POSITION ? 1 : 0;
      if (first[arc.after()] < first[arc.before()] + step) {
        first[arc.after()] = first[arc.before()] + step;
        changed = true;
      }
      if (last[arc.before()] > last[arc.after()] - step) {
        last[arc.before()] = last[arc.after()] - step;
        changed = true;
      }
    }
    return changed;
  }
}
