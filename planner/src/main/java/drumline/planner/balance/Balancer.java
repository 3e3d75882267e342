package drumline.planner.balance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;

/** Shares tasks with known times among stations so that the fullest one is as short as can be. */
public final class Balancer {
  private static final long LOADS_PER_S = 400_000;
  private static final int MOST_LOADS = 10_000;
  private static final int NARROW_LOADS = 60;
  private final TaskGraph graph;
  private final TaskGraph reversed;
  private final int stationCount;
  private final BooleanSupplier stop;
  private final long deadlineNanos;
  private long budget;
  private int low;
  private int high;
  private int[] stationOf;
  private boolean timedOut;

  private Balancer(BalanceProblem problem, double searchS, BooleanSupplier stop) {
    graph = new TaskGraph(problem.durationsMs(), problem.arcs(), false);
    reversed = graph.reversed();
    stationCount = problem.stationCount();
    this.stop = stop;
    budget = (long) (searchS * LOADS_PER_S);
    deadlineNanos = System.nanoTime() + (long) ((2 * searchS + 1) * 1e9);
    low = LineBounds.cycle(graph, reversed, stationCount);
    high = (int) Math.min(Integer.MAX_VALUE, graph.totalTime);
    stationOf = new int[graph.count];
    Arrays.fill(stationOf, 1);
  }

  /**
   * Shares the tasks.
   *
   * @param problem what to share
   * @param searchS effort in seconds of an unloaded machine, above 0
   * @param stop asked now and then whether to end with the best so far
   * @throws IllegalArgumentException if the effort is not above 0 (NaN fails)
   */
  public static BalanceResult balance(
      BalanceProblem problem, double searchS, BooleanSupplier stop) {
    if (!(searchS > 0)) {
      throw new IllegalArgumentException("searchS is " + searchS + ", allowed: above 0");
    }
    long start = System.nanoTime();
    Balancer balancer = new Balancer(problem, searchS, stop);
    balancer.search();
    List<Integer> stations = new ArrayList<>();
    for (int station : balancer.stationOf) {
      stations.add(station);
    }
    List<String> notes =
        balancer.timedOut
            ? List.of(
                "The clock stopped the search before its work was done; another run may end with another sharing.")
            : List.of();
    return new BalanceResult(
        balancer.high,
        balancer.low,
        balancer.low == balancer.high,
        stations,
        (System.nanoTime() - start) / 1_000_000,
        notes);
  }

  private boolean isStopped() {
    timedOut |= System.nanoTime() > deadlineNanos;
    return timedOut || stop.getAsBoolean();
  }

  private void search() {
    climb();
    prove();
  }

  /** A first sharing: the lowest cycle at which a narrow search from either end succeeds. */
  private void climb() {
    int step = 1;
    int cycle = low;
    while (cycle < high && !isStopped()) {
      if (tryCycle(cycle, 40L * stationCount * NARROW_LOADS, NARROW_LOADS)
          == StationSearch.Verdict.ENOUGH) {
        break;
      }
      cycle = Math.min(high, Math.max(low, cycle) + step);
      step += Math.max(1, step / 2);
    }
  }

  /** Closes the gap from below, with more and more effort for each cycle. */
  private void prove() {
    long effort = 20_000;
    while (low < high && budget > 0 && !isStopped()) {
      int before = high - low;
      int middle = low + (high - low - 1) / 2;
      tryCycle(middle, effort, MOST_LOADS);
      if (low <= middle && high > middle) {
        tryCycle(low, effort, MOST_LOADS);
        tryCycle(high - 1, effort, MOST_LOADS);
      }
      if (high - low == before) {
        effort *= 2;
      }
    }
  }

  private StationSearch.Verdict tryCycle(int cycle, long effort, int mostLoads) {
    if (cycle < low) {
      return StationSearch.Verdict.TOO_SHORT;
    }
    if (cycle >= high) {
      return StationSearch.Verdict.ENOUGH;
    }
    for (TaskGraph side : List.of(graph, reversed)) {
      StationSearch search = new StationSearch(side, cycle, stationCount, effort);
      StationSearch.Verdict verdict = search.decide(mostLoads, this::isStopped);
      budget -= effort - search.budgetLeft();
      if (verdict == StationSearch.Verdict.ENOUGH) {
        take(search.stationOf());
        return verdict;
      }
      if (verdict == StationSearch.Verdict.TOO_SHORT) {
        low = Math.max(low, cycle + 1);
        return verdict;
      }
    }
    return StationSearch.Verdict.OPEN;
  }

  private void take(int[] stations) {
    long[] load = new long[stationCount + 1];
    for (int i = 0; i < graph.count; i++) {
      load[stations[i]] += graph.time[i];
    }
    high = (int) Arrays.stream(load).max().orElse(0);
    stationOf = stations;
  }
}
