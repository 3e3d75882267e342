package drumline.planner.stage;

import drumline.planner.bound.PairSavings;
import drumline.planner.model.Layout;
import drumline.planner.model.PairRule;
import drumline.planner.model.PickUp;
import drumline.planner.tables.ProblemTables;
import drumline.planner.tables.Steps;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;

/**
 * Decides whether a cycle suffices: fills the stages in order, each with every full set of tasks
 * that it can do in time, and goes on from every set of tasks done that was reached.
 *
 * <p>Full sets are enough, because a task moved to an earlier stage leaves the later one no worse
 * off; a task that must share its stage with another is not counted as missing. States whose tasks
 * left weigh more than the positions left are dropped.
 */
final class StageProof {
  private final ProblemTables tables;
  private final StageKinds kinds;
  private final PositionOracle[] oracles;
  private final StageTables[] stages;
  private final int[] order;
  private final long[] before;
  private final long all;
  private final long shared;
  private final long drumOnly;
  private final List<int[]> mustShare;
  private final int mostStates;
  private final BooleanSupplier stop;
  private boolean refined;
  private int cycleMs;
  private boolean complete;
  private long states;

  StageProof(ProblemTables tables, int mostStates, Steps steps, BooleanSupplier stop) {
    this.tables = tables;
    this.mostStates = mostStates;
    this.stop = stop;
    kinds = new StageKinds(tables);
    PairSavings savings = new PairSavings(tables);
    stages = new StageTables[kinds.count()];
    oracles = new PositionOracle[kinds.count()];
    for (int k = 0; k < kinds.count(); k++) {
      stages[k] = new StageTables(tables, savings, kinds.stage(k));
      oracles[k] = new PositionOracle(stages[k], steps, Arrays.copyOf(oracles, k));
    }
    order = TopologicalOrder.of(tables);
    before = new long[tables.taskCount];
    for (int i = 0; i < tables.taskCount; i++) {
      for (int j = 0; j < tables.taskCount; j++) {
        before[i] |= tables.precedes[j][i] ? 1L << j : 0;
      }
    }
    all = tables.taskCount == 64 ? -1L : (1L << tables.taskCount) - 1;
    long inDrum = 0;
    for (int i = 0; i < tables.taskCount; i++) {
      boolean canLeave =
          tables.stageCount > tables.drumCount && tables.canStand(i, tables.drumCount);
      inDrum |= canLeave ? 0 : 1L << i;
    }
    drumOnly = inDrum;
    mustShare = tables.pairs(PairRule.Kind.MUST_SHARE);
    long bits = 0;
    for (int[] pair : mustShare) {
      bits |= 1L << pair[0] | 1L << pair[1];
    }
    shared = bits;
  }

  /** Outcome of a decision. */
  enum Verdict {
    ENOUGH,
    TOO_SHORT,
    OPEN
  }

  private final List<Map<Long, Long>> levels = new ArrayList<>();

  /** Decides on a cycle, in ms. */
  Verdict decide(int newCycleMs) {
    cycleMs = newCycleMs;
    complete = true;
    states = 0;
    Optional<CoverWeights> weights = weights();
    if (weights.isEmpty()) {
      return Verdict.OPEN;
    }
    levels.clear();
    levels.add(new HashMap<>(Map.of(0L, 0L)));
    for (int k = 0; k < tables.stageCount && complete; k++) {
      Map<Long, Long> next = new HashMap<>();
      int left = Math.max(0, tables.drumCount - 1 - k);
      for (long done : levels.get(k).keySet().stream().sorted().toList()) {
        Level level = new Level(k, done, left, next, weights.orElseThrow());
        level.fill(0, 0, 0);
        if (!complete) {
          return Verdict.OPEN;
        }
      }
      levels.add(next);
    }
    return levels.get(tables.stageCount).containsKey(all) ? Verdict.ENOUGH : Verdict.TOO_SHORT;
  }

  private Optional<CoverWeights> weights() {
    List<long[]> lists = new ArrayList<>();
    for (int k = 0; k < kinds.count(); k++) {
      int stage = kinds.stage(k);
      if (stage < tables.drumCount) {
        FeasibleSets sets =
            new FeasibleSets(stages[k], oracles[k], drumOnly, limit(stage), mostStates, stop);
        if (!sets.isComplete()) {
          return Optional.empty();
        }
        lists.add(sets.sets());
      }
    }
    long[] joined = lists.stream().flatMapToLong(Arrays::stream).toArray();
    return Optional.of(new CoverWeights(tables.taskCount, drumOnly, joined));
  }

  private int limit(int stage) {
    if (stage < tables.drumCount) {
      return cycleMs - tables.problem.indexMs();
    }
    PickUp pickUp = tables.problem.pickUp().orElseThrow();
    return cycleMs * pickUp.spindleCount() - pickUp.carryMs() - tables.shortestMs(tables.cutTask);
  }

  /** True if the last layout failed for want of seats, which the next decision will respect. */
  boolean isRefined() {
    return refined;
  }

  /**
   * The layout of the last decision that was {@link Verdict#ENOUGH}; empty if a time is not known.
   */
  Optional<Layout> layout() {
    Map<Integer, Layout.Placement> placements = new TreeMap<>();
    long done = all;
    int needMs = 0;
    refined = false;
    for (int k = tables.stageCount - 1; k >= 0; k--) {
      long before = Objects.requireNonNull(levels.get(k + 1).get(done));
      PositionOracle oracle = oracles[kinds.kind(k)];
      PositionSearch search = oracle.search();
      PositionSearch.Answer answer = search.searchWithSeats(done ^ before, limit(k));
      if (answer == PositionSearch.Answer.TOO_LONG) {
        oracle.ban(done ^ before, limit(k));
        refined = true;
      }
      if (answer != PositionSearch.Answer.FITS) {
        return Optional.empty();
      }
      new StageLayout(tables, k, kinds.stage(kinds.kind(k))).read(search, placements);
      done = before;
      needMs = Math.max(needMs, need(k, search.madeMs()));
    }
    return Optional.of(new Layout(List.copyOf(placements.values()), needMs));
  }

  private int need(int stage, int madeMs) {
    if (stage < tables.drumCount) {
      return madeMs == 0 ? 0 : madeMs + tables.problem.indexMs();
    }
    PickUp pickUp = tables.problem.pickUp().orElseThrow();
    int tripMs = pickUp.carryMs() + tables.shortestMs(tables.cutTask) + madeMs;
    return -Math.floorDiv(-tripMs, pickUp.spindleCount());
  }

  /** Filling one stage from one state. */
  private final class Level {
    private final long done;
    private final int left;
    private final Map<Long, Long> next;
    private final CoverWeights weights;
    private final StageTables here;
    private final PositionOracle oracle;
    private final int limitMs;
    private final long due;

    Level(int stage, long done, int left, Map<Long, Long> next, CoverWeights weights) {
      this.done = done;
      this.left = left;
      this.next = next;
      this.weights = weights;
      here = stages[kinds.kind(stage)];
      oracle = oracles[kinds.kind(stage)];
      limitMs = limit(stage);
      long bits = 0;
      for (int i = 0; i < tables.taskCount; i++) {
        bits |= tables.windows[i].last() <= stage ? 1L << i : 0;
      }
      due = bits & ~done;
    }

    void fill(int from, long set, long skipped) {
      if (isTooMuch()) {
        return;
      }
      for (int p = from; p < order.length; p++) {
        int i = order[p];
        long bit = 1L << i;
        if (canAdd(i, set) && oracle.fits(set | bit, limitMs)) {
          fill(p + 1, set | bit, skipped);
          if ((due & bit) != 0) {
            return;
          }
        } else if ((due & bit) != 0) {
          return;
        }
      }
      take(set);
    }

    private boolean isTooMuch() {
      complete &= oracle.asked() < mostStates;
      return !complete;
    }

    private boolean canAdd(int i, long set) {
      if (((done | set) & 1L << i) != 0
          || here.options[i].length == 0
          || (before[i] & ~(done | set)) != 0) {
        return false;
      }
      for (long rest = set; rest != 0; rest &= rest - 1) {
        if (here.apart[i][Long.numberOfTrailingZeros(rest)]) {
          return false;
        }
      }
      return true;
    }

    private void take(long set) {
      if (!sharesRight(set) || !isFull(set)) {
        return;
      }
      long now = done | set;
      if (weights.of(all & ~now) > left + 1e-6) {
        return;
      }
      if (next.putIfAbsent(now, done) == null
          && (++states >= mostStates || ((states & 255) == 0 && stop.getAsBoolean()))) {
        complete = false;
      }
    }

    private boolean sharesRight(long set) {
      for (int[] pair : mustShare) {
        if ((set >>> pair[0] & 1) != (set >>> pair[1] & 1)) {
          return false;
        }
      }
      return true;
    }

    private boolean isFull(long set) {
      for (int i : order) {
        if ((shared >>> i & 1) == 0 && canAdd(i, set) && oracle.fits(set | 1L << i, limitMs)) {
          return false;
        }
      }
      return true;
    }
  }
}
