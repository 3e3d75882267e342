package drumline.planner.seed;

import drumline.planner.model.Mode;
import drumline.planner.model.PairRule;
import drumline.planner.model.SpindleRules;
import drumline.planner.tables.ProblemTables;

/** For every two modes of every two tasks: may they overlap, and the pause between them. */
final class PairTimes {
  private static final int OVERLAPS = -1;

  /** By task: number of its first mode among all modes. */
  final int[] firstMode;

  /** By mode: its time in ms. */
  final int[] durationMs;

  /** By mode: shares of spindle and grip. */
  final int[] spindleShare;

  final int[] gripShare;

  /**
   * By stage group (0 drum, 1 back), earlier mode, later mode: pause in ms, −1 if they may overlap.
   */
  private final int[][][] pause;

  private final int[][] releaseMs;
  private final int drumCount;

  PairTimes(ProblemTables tables) {
    drumCount = tables.drumCount;
    int n = tables.taskCount;
    firstMode = new int[n + 1];
    for (int i = 0; i < n; i++) {
      firstMode[i + 1] = firstMode[i] + tables.problem.tasks().get(i).modes().size();
    }
    int modeCount = firstMode[n];
    durationMs = new int[modeCount];
    spindleShare = new int[modeCount];
    gripShare = new int[modeCount];
    int groups = tables.stageCount > drumCount ? 2 : 1;
    pause = new int[groups][modeCount][modeCount];
    releaseMs = new int[groups][modeCount];
    boolean[][] notOverlap = new boolean[n][n];
    for (int[] pair : tables.pairs(PairRule.Kind.MUST_NOT_OVERLAP)) {
      notOverlap[pair[0]][pair[1]] = true;
      notOverlap[pair[1]][pair[0]] = true;
    }
    for (int i = 0; i < n; i++) {
      for (int a = firstMode[i]; a < firstMode[i + 1]; a++) {
        Mode mode = tables.mode(i, a - firstMode[i]);
        durationMs[a] = mode.durationMs();
        spindleShare[a] = mode.spindleSharePermille();
        gripShare[a] = mode.gripSharePermille();
        for (int g = 0; g < groups; g++) {
          releaseMs[g][a] = tables.releaseMs(g == 0 ? 0 : drumCount, mode);
          fill(tables, g, a, mode, notOverlap[i]);
        }
      }
    }
  }

  private void fill(ProblemTables tables, int group, int a, Mode mode, boolean[] notOverlap) {
    SpindleRules rules = tables.spindle(group == 0 ? 0 : drumCount);
    for (int j = 0; j < tables.taskCount; j++) {
      for (int b = firstMode[j]; b < firstMode[j + 1]; b++) {
        Mode other = tables.mode(j, b - firstMode[j]);
        boolean overlap = !notOverlap[j] && rules.canOverlap(mode, other);
        pause[group][a][b] = overlap ? OVERLAPS : rules.changeMs(mode, other);
      }
    }
  }

  /** Pause between an earlier and a later mode, in ms; negative if they may overlap. */
  int pauseMs(int stage, int earlier, int later) {
    return pause[stage < drumCount ? 0 : 1][earlier][later];
  }

  /** Earliest start of a mode in a stage, in ms. */
  int releaseMs(int stage, int mode) {
    return releaseMs[stage < drumCount ? 0 : 1][mode];
  }
}
