package drumline.planner.seed;

import drumline.planner.model.Mode;
import drumline.planner.tables.ProblemTables;
import java.util.Arrays;

/**
 * Times of the tasks of one stage, one after the other in a given order, each as early as the rules
 * allow.
 */
final class StageClock {
  private final ProblemTables tables;
  private final PairTimes pairs;
  private final int[][] lagMs;
  private final int[] placedTask;
  private final int[] placedSlide;
  private final int[] placedMode;
  private int count;
  private int stage;
  private boolean loaded;

  /** By task: start and end of the last schedule its stage got. */
  final int[] start;

  final int[] end;

  StageClock(ProblemTables tables, PairTimes pairs) {
    this.tables = tables;
    this.pairs = pairs;
    int n = tables.taskCount;
    placedTask = new int[n];
    placedSlide = new int[n];
    placedMode = new int[n];
    start = new int[n];
    end = new int[n];
    lagMs = new int[n][n];
    for (int[] row : lagMs) {
      Arrays.fill(row, -1);
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        lagMs[i][j] = tables.precedes[i][j] ? 0 : -1;
      }
    }
    for (ProblemTables.Arc arc : tables.arcs) {
      lagMs[arc.before()][arc.after()] = Math.max(lagMs[arc.before()][arc.after()], arc.lagMs());
    }
    if (tables.cutTask >= 0) {
      for (int i = 0; i < n; i++) {
        if (i != tables.cutTask && !tables.overlapsCut[i]) {
          lagMs[i][tables.cutTask] = Math.max(lagMs[i][tables.cutTask], 0);
        }
      }
    }
  }

  /** Begins an empty stage. */
  void begin(int newStage, boolean withLoads) {
    stage = newStage;
    loaded = withLoads;
    count = 0;
  }

  /** True if a task must follow another one in the same stage. */
  boolean follows(int later, int earlier) {
    return lagMs[earlier][later] >= 0 || (later == tables.cutTask && tables.overlapsCut[earlier]);
  }

  /** Places the next task as early as possible; returns its end. */
  int place(int task, int slide, int mode) {
    int from = pairs.releaseMs(stage, mode);
    if (task == tables.cutTask) {
      from = Math.max(from, tables.gripMs());
    }
    for (int p = 0; p < count; p++) {
      int other = placedTask[p];
      if (lagMs[other][task] >= 0) {
        from = Math.max(from, end[other] + lagMs[other][task]);
      }
      if (task == tables.cutTask && tables.overlapsCut[other]) {
        from = Math.max(from, end[other] - pairs.durationMs[mode]);
      }
    }
    int best = fits(slide, mode, from) ? from : later(slide, mode, from);
    placedTask[count] = task;
    placedSlide[count] = slide;
    placedMode[count] = mode;
    count++;
    start[task] = best;
    end[task] = best + pairs.durationMs[mode];
    return end[task];
  }

  private int later(int slide, int mode, int from) {
    int best = Integer.MAX_VALUE;
    for (int p = 0; p < count; p++) {
      int other = placedTask[p];
      int at = end[other] + Math.max(0, pairs.pauseMs(stage, placedMode[p], mode));
      if (at > from && at < best && fits(slide, mode, at)) {
        best = at;
      }
      if (placedSlide[p] == slide) {
        at = Math.max(at, end[other] + tables.shiftMs(slide));
        if (at > from && at < best && fits(slide, mode, at)) {
          best = at;
        }
      }
    }
    return best;
  }

  private boolean fits(int slide, int mode, int at) {
    int until = at + pairs.durationMs[mode];
    for (int p = 0; p < count; p++) {
      int other = placedTask[p];
      int before = pairs.pauseMs(stage, placedMode[p], mode);
      int after = pairs.pauseMs(stage, mode, placedMode[p]);
      if (placedSlide[p] == slide) {
        before = Math.max(before, tables.shiftMs(slide));
        after = Math.max(after, tables.shiftMs(slide));
      }
      if (before >= 0 && at < end[other] + before && until + after > start[other]) {
        return false;
      }
    }
    return !loaded || carries(mode, at, until);
  }

  private boolean carries(int mode, int at, int until) {
    if (!carriesAt(mode, at)) {
      return false;
    }
    for (int p = 0; p < count; p++) {
      int moment = start[placedTask[p]];
      if (moment > at && moment < until && !carriesAt(mode, moment)) {
        return false;
      }
    }
    return true;
  }

  private boolean carriesAt(int mode, int moment) {
    int spindle = pairs.spindleShare[mode];
    int grip = pairs.gripShare[mode];
    for (int p = 0; p < count; p++) {
      if (start[placedTask[p]] <= moment && moment < end[placedTask[p]]) {
        spindle += pairs.spindleShare[placedMode[p]];
        grip += pairs.gripShare[placedMode[p]];
      }
    }
    return spindle <= Mode.FULL_PERMILLE && grip <= Mode.FULL_PERMILLE;
  }
}
