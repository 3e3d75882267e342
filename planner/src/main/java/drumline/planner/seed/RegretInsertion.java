package drumline.planner.seed;

import drumline.planner.tables.ProblemTables;

/**
 * A first layout: of the tasks whose predecessors stand, the one that would lose most by not
 * getting its best place is placed next.
 */
final class RegretInsertion {
  private static final double BROKEN_COST = 1e7;
  private final LayoutState state;
  private final ModeFilter filter;
  private final ProblemTables tables;
  private final double targetMs;
  private final boolean[] placed;

  private RegretInsertion(LayoutState state, ModeFilter filter, double targetMs) {
    this.state = state;
    this.filter = filter;
    this.targetMs = targetMs;
    tables = state.tables;
    placed = new boolean[tables.taskCount];
  }

  /** Fills an empty state. */
  static void fill(LayoutState state, ModeFilter filter, double targetMs) {
    RegretInsertion insertion = new RegretInsertion(state, filter, targetMs);
    for (int step = 0; step < state.tables.taskCount; step++) {
      insertion.placeNext(step);
    }
  }

  private void placeNext(int step) {
    Place best = null;
    for (int i = 0; i < tables.taskCount; i++) {
      if (!placed[i] && isReady(i)) {
        Place place = bestPlace(i);
        if (best == null || place.regret > best.regret) {
          best = place;
        }
      }
    }
    if (best == null) {
      throw new IllegalStateException("order rules form a circle");
    }
    placed[best.task] = true;
    state.rank[best.task] = step;
    state.put(best.task, best.slide, best.mode);
    state.refresh(tables.stageOfSlide[best.slide]);
  }

  private boolean isReady(int task) {
    for (int i = 0; i < tables.taskCount; i++) {
      if (!placed[i] && tables.precedes[i][task]) {
        return false;
      }
    }
    return true;
  }

  private record Place(int task, int slide, int mode, double regret) {}

  private Place bestPlace(int task) {
    double best = Double.MAX_VALUE;
    double second = Double.MAX_VALUE;
    int bestSlide = -1;
    int bestMode = -1;
    state.rank[task] = tables.taskCount;
    for (int s : filter.slides(task)) {
      double here = Double.MAX_VALUE;
      for (int m : filter.modes(task, s)) {
        double cost = cost(task, s, m);
        if (cost < here) {
          here = cost;
          if (cost < best) {
            bestSlide = s;
            bestMode = m;
          }
        }
      }
      second = Math.min(second, Math.max(best, here));
      best = Math.min(best, here);
    }
    double regret = second == Double.MAX_VALUE ? BROKEN_COST : second - best;
    return new Place(task, bestSlide, bestMode, regret + 1e-6 * (tables.taskCount - task));
  }

  /** Growth of the stage, dearer above the target, with a small charge for late stages. */
  private double cost(int task, int slide, int mode) {
    int stage = tables.stageOfSlide[slide];
    int before = state.needMs[stage];
    state.put(task, slide, mode);
    state.refresh(stage);
    double over = Math.max(0, state.needMs[stage] - targetMs) - Math.max(0, before - targetMs);
    double cost =
        (state.needMs[stage] - before)
            + 20 * over
            + BROKEN_COST * state.rules.brokenAt(state, task);
    state.put(task, -1, 0);
    state.refresh(stage);
    return cost + 0.02 * targetMs * stage;
  }
}
