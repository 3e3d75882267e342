package drumline.planner.seed;

import drumline.planner.model.Mode;
import drumline.planner.model.SpindleCondition;
import drumline.planner.tables.ProblemTables;
import java.util.Arrays;
import java.util.TreeSet;

/** By task and slide: the modes that can be used, at one common speed where the machine has one. */
final class ModeFilter {
  private final ProblemTables tables;
  private final int[][][] modes;

  /** Modes with each position's own speed. */
  ModeFilter(ProblemTables tables) {
    this(tables, -1);
  }

  /** Modes at a common speed in the drum; −1 for each position's own. */
  ModeFilter(ProblemTables tables, int commonRevPerMin) {
    this.tables = tables;
    modes = new int[tables.taskCount][tables.slideCount()][];
    for (int i = 0; i < tables.taskCount; i++) {
      for (int s = 0; s < tables.slideCount(); s++) {
        modes[i][s] = usable(i, s, commonRevPerMin);
      }
    }
  }

  private int[] usable(int task, int slide, int commonRevPerMin) {
    boolean inDrum = tables.stageOfSlide[slide] < tables.drumCount;
    return Arrays.stream(tables.modesOf[task])
        .filter(m -> tables.allowed[task][slide][m])
        .filter(
            m ->
                commonRevPerMin < 0
                    || !inDrum
                    || !turnsOtherwise(tables.mode(task, m), commonRevPerMin))
        .toArray();
  }

  private static boolean turnsOtherwise(Mode mode, int revPerMin) {
    return isTurning(mode) && mode.revPerMin() != revPerMin;
  }

  private static boolean isTurning(Mode mode) {
    return mode.condition() == SpindleCondition.TURNING
        || mode.condition() == SpindleCondition.EXCLUSIVE_TURNING;
  }

  /** Speeds that some task can turn at. */
  static int[] speeds(ProblemTables tables) {
    TreeSet<Integer> speeds = new TreeSet<>();
    for (int i = 0; i < tables.taskCount; i++) {
      for (int m : tables.modesOf[i]) {
        if (isTurning(tables.mode(i, m))) {
          speeds.add(tables.mode(i, m).revPerMin());
        }
      }
    }
    return speeds.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Modes of a task on a slide. */
  int[] modes(int task, int slide) {
    return modes[task][slide];
  }

  /** Slides on which a task has a mode. */
  int[] slides(int task) {
    return Arrays.stream(tables.slidesOf[task])
        .filter(
            s -> modes[task][s].length > 0 && tables.windows[task].holds(tables.stageOfSlide[s]))
        .toArray();
  }

  /** True if every task has a mode somewhere. */
  boolean isComplete() {
    for (int i = 0; i < tables.taskCount; i++) {
      if (slides(i).length == 0) {
        return false;
      }
    }
    return true;
  }
}
