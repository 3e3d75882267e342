package drumline.planner.seed;

import drumline.planner.model.Layout;
import drumline.planner.tables.ProblemTables;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A layout in the making: places, modes and order of tasks, with what each stage needs. */
final class LayoutState {
  final ProblemTables tables;
  final PairTimes pairs;
  final RuleCount rules;
  private final StageClock clock;
  private final boolean[] stageLoaded;

  /** By task: slide, −1 if not placed yet; mode among the task's; place in the order. */
  final int[] slide;

  final int[] mode;
  final double[] rank;

  /** By stage: tasks in it, and how many. */
  final int[][] members;

  final int[] memberCount;

  /** By stage: shortest cycle it allows, in ms. */
  final int[] needMs;

  private final boolean[] done;

  LayoutState(ProblemTables tables) {
    this.tables = tables;
    pairs = new PairTimes(tables);
    rules = new RuleCount(tables);
    clock = new StageClock(tables, pairs);
    int n = tables.taskCount;
    slide = new int[n];
    Arrays.fill(slide, -1);
    mode = new int[n];
    rank = new double[n];
    members = new int[tables.stageCount][n];
    memberCount = new int[tables.stageCount];
    needMs = new int[tables.stageCount];
    done = new boolean[n];
    stageLoaded = new boolean[tables.stageCount];
    boolean anyLoad =
        Arrays.stream(pairs.spindleShare).anyMatch(x -> x > 0)
            || Arrays.stream(pairs.gripShare).anyMatch(x -> x > 0);
    Arrays.fill(stageLoaded, anyLoad);
  }

  int stage(int task) {
    return slide[task] < 0 ? -1 : tables.stageOfSlide[slide[task]];
  }

  /** Puts a task on a slide, or takes it away with −1; stages must be refreshed afterwards. */
  void put(int task, int newSlide, int newMode) {
    int oldStage = stage(task);
    if (oldStage >= 0) {
      int[] list = members[oldStage];
      int at = 0;
      while (list[at] != task) {
        at++;
      }
      list[at] = list[--memberCount[oldStage]];
    }
    slide[task] = newSlide;
    mode[task] = newMode;
    if (newSlide >= 0) {
      int newStage = tables.stageOfSlide[newSlide];
      members[newStage][memberCount[newStage]++] = task;
    }
  }

  /** Works out what a stage needs, and the back stage with it if the cut-off is in it. */
  void refresh(int stage) {
    int endMs = schedule(stage);
    if (stage < tables.drumCount) {
      needMs[stage] = memberCount[stage] == 0 ? 0 : endMs + tables.problem.indexMs();
      if (stage == tables.drumCount - 1 && tables.stageCount > tables.drumCount) {
        refresh(tables.drumCount);
      }
    } else {
      needMs[stage] = roundTrip(endMs);
    }
  }

  private int roundTrip(int backEndMs) {
    int cut = tables.cutTask;
    int cutMs = slide[cut] < 0 ? 0 : pairs.durationMs[pairs.firstMode[cut] + mode[cut]];
    return tables
        .problem
        .pickUp()
        .map(p -> -Math.floorDiv(-(p.carryMs() + cutMs + backEndMs), p.spindleCount()))
        .orElse(0);
  }

  private int schedule(int stage) {
    int size = memberCount[stage];
    int[] list = members[stage];
    clock.begin(stage, stageLoaded[stage]);
    int last = 0;
    for (int p = 0; p < size; p++) {
      done[list[p]] = false;
    }
    for (int p = 0; p < size; p++) {
      int next = next(list, size);
      done[next] = true;
      int endMs = clock.place(next, slide[next], pairs.firstMode[next] + mode[next]);
      last = Math.max(last, next == tables.cutTask ? endMs + tables.barFeedMs() : endMs);
    }
    return last;
  }

  private int next(int[] list, int size) {
    int best = -1;
    int fallback = -1;
    for (int p = 0; p < size; p++) {
      int task = list[p];
      if (done[task]) {
        continue;
      }
      if (fallback < 0 || rank[task] < rank[fallback]) {
        fallback = task;
      }
      if ((best < 0 || rank[task] < rank[best]) && isReady(task, list, size)) {
        best = task;
      }
    }
    return best < 0 ? fallback : best;
  }

  private boolean isReady(int task, int[] list, int size) {
    for (int p = 0; p < size; p++) {
      int other = list[p];
      if (!done[other] && other != task && clock.follows(task, other)) {
        return false;
      }
    }
    return true;
  }

  /** Cycle that holds every stage, in ms. */
  int cycleMs() {
    int cycle = 0;
    for (int need : needMs) {
      cycle = Math.max(cycle, need);
    }
    return cycle;
  }

  /** The finished layout. */
  Layout layout() {
    for (int k = 0; k < tables.stageCount; k++) {
      refresh(k);
    }
    List<Layout.Placement> placements = new ArrayList<>();
    for (int i = 0; i < tables.taskCount; i++) {
      String taskId = tables.problem.tasks().get(i).id();
      String slideId = tables.problem.slides().get(slide[i]).id();
      placements.add(new Layout.Placement(taskId, slideId, mode[i], clock.start[i], clock.end[i]));
    }
    return new Layout(placements, cycleMs());
  }
}
