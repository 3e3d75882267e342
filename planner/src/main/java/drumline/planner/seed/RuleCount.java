package drumline.planner.seed;

import drumline.planner.model.PairRule;
import drumline.planner.tables.ProblemTables;
import java.util.ArrayList;
import java.util.List;

/** Counts broken rules of place around one task: order, pairs, seats. */
final class RuleCount {
  private final ProblemTables tables;
  private final List<List<ProblemTables.Arc>> arcsOf = new ArrayList<>();
  private final List<List<int[]>> shareWith = new ArrayList<>();
  private final List<List<int[]>> apartFrom = new ArrayList<>();

  RuleCount(ProblemTables tables) {
    this.tables = tables;
    for (int i = 0; i < tables.taskCount; i++) {
      arcsOf.add(new ArrayList<>());
      shareWith.add(new ArrayList<>());
      apartFrom.add(new ArrayList<>());
    }
    for (ProblemTables.Arc arc : tables.arcs) {
      arcsOf.get(arc.before()).add(arc);
      arcsOf.get(arc.after()).add(arc);
    }
    spread(tables.pairs(PairRule.Kind.MUST_SHARE), shareWith);
    spread(tables.pairs(PairRule.Kind.MUST_NOT_SHARE), apartFrom);
    addCut();
  }

  /** A task that follows the cut-off can only be done behind it. */
  private void addCut() {
    if (tables.cutTask < 0) {
      return;
    }
    for (int i = 0; i < tables.taskCount; i++) {
      if (tables.precedes[tables.cutTask][i]) {
        int[] pair = {tables.cutTask, i};
        apartFrom.get(i).add(pair);
        apartFrom.get(tables.cutTask).add(pair);
      }
    }
  }

  private static void spread(List<int[]> pairs, List<List<int[]>> byTask) {
    for (int[] pair : pairs) {
      byTask.get(pair[0]).add(pair);
      byTask.get(pair[1]).add(pair);
    }
  }

  /** Broken rules that a task takes part in; tasks without a place break none. */
  int brokenAt(LayoutState state, int task) {
    if (state.slide[task] < 0) {
      return 0;
    }
    int broken = 0;
    for (ProblemTables.Arc arc : arcsOf.get(task)) {
      broken += breaks(state, arc);
    }
    for (int[] pair : shareWith.get(task)) {
      broken += isPlaced(state, pair) && state.stage(pair[0]) != state.stage(pair[1]) ? 1 : 0;
    }
    for (int[] pair : apartFrom.get(task)) {
      broken += isPlaced(state, pair) && state.stage(pair[0]) == state.stage(pair[1]) ? 1 : 0;
    }
    return broken + seatsBroken(state, state.slide[task]);
  }

  private static boolean isPlaced(LayoutState state, int[] pair) {
    return state.slide[pair[0]] >= 0 && state.slide[pair[1]] >= 0;
  }

  private static int breaks(LayoutState state, ProblemTables.Arc arc) {
    int before = state.stage(arc.before());
    int after = state.stage(arc.after());
    if (before < 0 || after < 0 || before < after) {
      return 0;
    }
    if (before > after) {
      return before - after;
    }
    return switch (arc.sharing()) {
      case ANY_SLIDE -> 0;
      case SAME_SLIDE -> state.slide[arc.before()] == state.slide[arc.after()] ? 0 : 1;
      case LATER_POSITION -> 1;
    };
  }

  private int seatsBroken(LayoutState state, int slide) {
    int stage = tables.stageOfSlide[slide];
    int used = 0;
    for (int p = 0; p < state.memberCount[stage]; p++) {
      used += state.slide[state.members[stage][p]] == slide ? 1 : 0;
    }
    return Math.max(0, used - tables.seatCount(slide));
  }
}
