package drumline.planner.seed;

import drumline.planner.tables.ProblemTables;
import java.util.SplittableRandom;

/** One small change of a layout at a time, which can be taken back. */
final class Moves {
  private final LayoutState state;
  private final ProblemTables tables;
  private final ModeFilter filter;
  private final SplittableRandom random;
  private final int[][] slides;
  private final int[] oldTask;
  private final int[] oldSlide;
  private final int[] oldMode;
  private final double[] oldRank;
  private final int[] needBefore;
  private final int[] stages;
  private int stageCount;
  private int changed;
  private int brokenBefore;
  private int brokenAfter;

  Moves(LayoutState state, ModeFilter filter, SplittableRandom random) {
    this.state = state;
    this.filter = filter;
    this.random = random;
    tables = state.tables;
    int n = tables.taskCount;
    slides = new int[n][];
    for (int i = 0; i < n; i++) {
      slides[i] = filter.slides(i);
    }
    oldTask = new int[n + 2];
    oldSlide = new int[n + 2];
    oldMode = new int[n + 2];
    oldRank = new double[n + 2];
    needBefore = new int[tables.stageCount];
    stages = new int[2 * n + 4];
  }

  /** Makes a change; false if it came to nothing. */
  boolean propose() {
    System.arraycopy(state.needMs, 0, needBefore, 0, needBefore.length);
    changed = 0;
    stageCount = 0;
    brokenBefore = 0;
    brokenAfter = 0;
    int task = pick();
    int kind = random.nextInt(10);
    if (kind < 4) {
      move(task);
    } else if (kind < 7) {
      swap(task);
    } else if (kind < 9) {
      changeSpeed(task);
    } else {
      align(task);
    }
    for (int c = 0; c < changed; c++) {
      brokenAfter += state.rules.brokenAt(state, oldTask[c]);
    }
    for (int s = 0; s < stageCount; s++) {
      state.refresh(stages[s]);
    }
    return changed > 0;
  }

  /** Half of the time a task of the governing stage, else any. */
  private int pick() {
    if (random.nextBoolean()) {
      int worst = 0;
      for (int k = 1; k < tables.stageCount; k++) {
        worst = state.needMs[k] > state.needMs[worst] ? k : worst;
      }
      if (state.memberCount[worst] > 0) {
        return state.members[worst][random.nextInt(state.memberCount[worst])];
      }
    }
    return random.nextInt(tables.taskCount);
  }

  private void move(int task) {
    int target = slides[task][random.nextInt(slides[task].length)];
    put(task, target, mode(task, target));
    state.rank[task] = random.nextDouble() * tables.taskCount;
  }

  private int mode(int task, int slide) {
    int[] modes = filter.modes(task, slide);
    int stage = tables.stageOfSlide[slide];
    if (random.nextInt(3) > 0 && state.memberCount[stage] > 0) {
      int other = state.members[stage][random.nextInt(state.memberCount[stage])];
      int speed = tables.mode(other, state.mode[other]).revPerMin();
      for (int m : modes) {
        if (tables.mode(task, m).revPerMin() == speed) {
          return m;
        }
      }
    }
    return modes[random.nextInt(modes.length)];
  }

  private void swap(int task) {
    int other = random.nextInt(tables.taskCount);
    int here = state.slide[task];
    int there = state.slide[other];
    if (here == there
        || filter.modes(task, there).length == 0
        || filter.modes(other, here).length == 0) {
      return;
    }
    double rank = state.rank[task];
    put(task, there, mode(task, there));
    put(other, here, mode(other, here));
    state.rank[task] = state.rank[other];
    state.rank[other] = rank;
  }

  private void changeSpeed(int task) {
    put(task, state.slide[task], mode(task, state.slide[task]));
    if (random.nextBoolean()) {
      state.rank[task] = random.nextDouble() * tables.taskCount;
    }
  }

  /** All tasks of the stage that can, turn at one speed. */
  private void align(int task) {
    int[] modes = filter.modes(task, state.slide[task]);
    int speed = tables.mode(task, modes[random.nextInt(modes.length)]).revPerMin();
    int stage = state.stage(task);
    int[] list = java.util.Arrays.copyOf(state.members[stage], state.memberCount[stage]);
    for (int member : list) {
      for (int m : filter.modes(member, state.slide[member])) {
        if (tables.mode(member, m).revPerMin() == speed) {
          put(member, state.slide[member], m);
        }
      }
    }
  }

  private void put(int task, int slide, int mode) {
    brokenBefore += state.rules.brokenAt(state, task);
    oldTask[changed] = task;
    oldSlide[changed] = state.slide[task];
    oldMode[changed] = state.mode[task];
    oldRank[changed++] = state.rank[task];
    touch(state.stage(task));
    state.put(task, slide, mode);
    touch(state.stage(task));
  }

  private void touch(int stage) {
    for (int s = 0; s < stageCount; s++) {
      if (stages[s] == stage) {
        return;
      }
    }
    stages[stageCount++] = stage;
  }

  /** Takes the last change back. */
  void undo() {
    for (int c = changed - 1; c >= 0; c--) {
      state.put(oldTask[c], oldSlide[c], oldMode[c]);
      state.rank[oldTask[c]] = oldRank[c];
    }
    System.arraycopy(needBefore, 0, state.needMs, 0, needBefore.length);
  }

  int brokenBefore() {
    return brokenBefore;
  }

  int brokenAfter() {
    return brokenAfter;
  }

  int[] needBefore() {
    return needBefore;
  }
}
