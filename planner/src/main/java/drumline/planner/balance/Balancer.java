package drumline.planner.balance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/** Shares tasks with known times among stations so that the fullest one is as short as can be. */
public final class Balancer {
  private static final long STEPS_PER_S = 12_000_000;
  private static final int MOST_LOADS = 10_000;
  private static final int NARROW_LOADS = 60;
  private static final int BEAM_LOADS = 150;
  private static final int EXCHANGES_PER_WIDTH = 50_000;
  private static final int FIRST_WIDTH = 20;
  private static final long FIRST_EFFORT = 20_000;
  private final SplittableRandom random = new SplittableRandom(1);
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
    budget = (long) (searchS * STEPS_PER_S);
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
    long effort = FIRST_EFFORT;
    int width = FIRST_WIDTH;
    while (low < high && budget > 0 && !isStopped()) {
      int middle = low + (high - 1 - low) / 2;
      prove(middle, effort, MOST_LOADS);
      prove(low, effort, MOST_LOADS);
      prove(high - 1, effort, MOST_LOADS);
      prove(high - 1, effort, NARROW_LOADS);
      beam(low, width);
      beam(high - 1, width);
      exchange(width * EXCHANGES_PER_WIDTH);
      effort *= 2;
      width += width / 2;
    }
  }

  /** A first sharing: the lowest cycle, in growing steps, at which a narrow search succeeds. */
  private void climb() {
    int step = 1;
    int cycle = low;
    while (cycle < high && !isStopped() && !beam(cycle, FIRST_WIDTH)) {
      cycle = Math.min(high - 1, cycle) + step;
      step += Math.max(1, step / 2);
    }
  }

  private boolean beam(int cycle, int width) {
    boolean found = false;
    for (TaskGraph side : List.of(graph, reversed)) {
      if (!found && cycle >= low && cycle < high && !isStopped()) {
        BeamSearch search = new BeamSearch(side, cycle, stationCount, random);
        Optional<int[]> sharing = search.search(width, BEAM_LOADS, this::isStopped);
        budget -= search.effort();
        sharing.ifPresent(this::take);
        found = sharing.isPresent();
      }
    }
    return found;
  }

  /** Tries to gain a little, again and again, for as long as it succeeds. */
  private void exchange(int stepCount) {
    boolean gained = true;
    while (gained && low < high && budget > 0 && !isStopped()) {
      StationExchange search =
          new StationExchange(graph, reversed, stationCount, stationOf, random);
      gained = search.search(high - 1, stepCount, this::isStopped);
      budget -= stepCount / 2;
      if (gained) {
        take(search.stationOf());
      }
    }
  }

  private void prove(int cycle, long effort, int mostLoads) {
    for (TaskGraph side : List.of(graph, reversed)) {
      if (cycle < low || cycle >= high || isStopped()) {
        return;
      }
      StationSearch search = new StationSearch(side, cycle, stationCount, effort);
      StationSearch.Verdict verdict = search.decide(mostLoads, this::isStopped);
      budget -= search.effort();
      if (verdict == StationSearch.Verdict.ENOUGH) {
        take(search.stationOf());
      } else if (verdict == StationSearch.Verdict.TOO_SHORT) {
        low = Math.max(low, cycle + 1);
      }
    }
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
