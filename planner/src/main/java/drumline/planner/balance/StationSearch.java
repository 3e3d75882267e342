package drumline.planner.balance;

import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;

/**
 * Decides whether a cycle suffices for a number of stations: loads stations one after the other
 * with full loads, always going on from the most promising state of the next level in turn, and
 * never twice from the same set of tasks.
 *
 * <p>Source: E. Sewell, S. Jacobson, A branch, bound and remember algorithm for the simple assembly
 * line balancing problem, INFORMS Journal on Computing 24 (2012) (from memory).
 */
final class StationSearch {
  private static final double SPREAD = 0.02;
  private final TaskGraph graph;
  private final int cycle;
  private final int stationCount;
  private final StationLoads loads;
  private final LoadRule rule;
  private final StateSet seen;
  private final PriorityQueue<FilledStations>[] levels;
  private final long mostIdle;
  private long budget;
  private long listed;
  private boolean complete = true;
  private Optional<FilledStations> goal = Optional.empty();

  /** How a decision ended. */
  enum Verdict {
    /** A sharing was found. */
    ENOUGH,
    /** It is proven that there is none. */
    TOO_SHORT,
    /** The effort was used up. */
    OPEN
  }

  @SuppressWarnings("unchecked")
  StationSearch(TaskGraph graph, int cycle, int stationCount, long budget) {
    this.graph = graph;
    this.cycle = cycle;
    this.stationCount = stationCount;
    this.budget = budget;
    loads = new StationLoads(graph, graph.latestStations(cycle, stationCount));
    rule = new LoadRule(graph, cycle, loads);
    seen = new StateSet();
    levels = (PriorityQueue<FilledStations>[]) new PriorityQueue<?>[stationCount + 1];
    for (int k = 0; k <= stationCount; k++) {
      levels[k] = new PriorityQueue<>((a, b) -> Double.compare(a.worth, b.worth));
    }
    mostIdle = (long) cycle * stationCount - graph.totalTime;
  }

  /** Searches until decided, out of budget or stopped. */
  Verdict decide(int mostLoads, BooleanSupplier stop) {
    if (mostIdle < 0) {
      return Verdict.TOO_SHORT;
    }
    levels[0].add(FilledStations.none(graph));
    int waiting = 1;
    int level = 0;
    while (waiting > 0 && goal.isEmpty()) {
      if (!levels[level].isEmpty()) {
        if (budget <= 0 || stop.getAsBoolean()) {
          return Verdict.OPEN;
        }
        int before = size(level + 1);
        expand(levels[level].poll(), mostLoads, stop);
        waiting += size(level + 1) - before - 1;
      }
      level = (level + 1) % stationCount;
    }
    if (goal.isPresent()) {
      return Verdict.ENOUGH;
    }
    return complete ? Verdict.TOO_SHORT : Verdict.OPEN;
  }

  private int size(int level) {
    return levels[level].size();
  }

  private void expand(FilledStations state, int mostLoads, BooleanSupplier stop) {
    int[] taken = {0};
    boolean all =
        loads.list(
            state.done,
            state.stations + 1,
            cycle,
            (load, size, idle) -> {
              budget--;
              listed++;
              offer(state, load, size, idle);
              boolean going = (++taken[0] & 1023) != 0 || !stop.getAsBoolean();
              return going && taken[0] < mostLoads && goal.isEmpty() && budget > 0;
            });
    complete &= all || goal.isPresent();
  }

  private void offer(FilledStations state, int[] load, int size, int idle) {
    int stations = state.stations + 1;
    long totalIdle = state.idle + idle;
    long[] done = state.doneWith(load, size);
    int left = graph.count;
    for (long word : done) {
      left -= Long.bitCount(word);
    }
    if (left == 0) {
      goal = Optional.of(new FilledStations(done, stations, 0, 0, state));
      return;
    }
    if (totalIdle > mostIdle || rule.isBeaten(state.done, load, size, idle)) {
      return;
    }
    if (rule.stationsFor(done) > stationCount - stations || !seen.addIfBetter(done, stations)) {
      return;
    }
    double worth = totalIdle / (double) stations - SPREAD * (graph.count - left);
    levels[stations].add(new FilledStations(done, stations, totalIdle, worth, state));
  }

  /** Effort so far, in steps. */
  long effort() {
    return loads.visits() + BeamSearch.STEPS_PER_LOAD * listed;
  }

  /** By task: station 1…M of the sharing found. */
  int[] stationOf() {
    return goal.orElseThrow().stationOf(graph, stationCount);
  }
}
