package drumline.planner.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * Looks for a sharing at a cycle: fills all stations in step, keeps the most promising states of
 * each level only, and lists the loads of each in an order that chance has a say in.
 */
final class BeamSearch {
  /** Steps that a load costs once it is listed. */
  static final int STEPS_PER_LOAD = 5;

  private final TaskGraph graph;
  private final int cycle;
  private final int stationCount;
  private final StationLoads loads;
  private final LoadRule rule;
  private final SplittableRandom random;
  private final long mostIdle;
  private final double[] weight;
  private long listed;
  private Optional<FilledStations> goal = Optional.empty();

  BeamSearch(TaskGraph graph, int cycle, int stationCount, SplittableRandom random) {
    this.graph = graph;
    this.cycle = cycle;
    this.stationCount = stationCount;
    this.random = random;
    loads = new StationLoads(graph, graph.latestStations(cycle, stationCount));
    rule = new LoadRule(graph, cycle, loads);
    mostIdle = (long) cycle * stationCount - graph.totalTime;
    weight = weights();
  }

  /**
   * How much it helps to have a task done: long ones, and those many wait for, to a random degree.
   */
  private double[] weights() {
    double forLong = random.nextDouble();
    double forMany = random.nextInt(3) == 0 ? 0 : random.nextDouble() * 0.2;
    double forEach = random.nextDouble() * 0.1 * cycle;
    double[] weights = new double[graph.count];
    for (int i = 0; i < graph.count; i++) {
      double length = graph.time[i] / (double) Math.max(1, cycle);
      weights[i] = forLong * graph.time[i] * length + forMany * graph.afterTime[i] + forEach;
    }
    return weights;
  }

  /** Searches with a number of states a level and loads a state. */
  Optional<int[]> search(int width, int mostLoads, BooleanSupplier stop) {
    List<FilledStations> level = List.of(FilledStations.none(graph));
    for (int k = 0; k < stationCount && !level.isEmpty() && goal.isEmpty(); k++) {
      List<FilledStations> next = new ArrayList<>();
      StateSet seen = new StateSet();
      for (FilledStations state : level) {
        if (goal.isPresent() || stop.getAsBoolean()) {
          break;
        }
        expand(state, mostLoads, next, seen, stop);
      }
      next.sort((a, b) -> Double.compare(a.worth, b.worth));
      level = new ArrayList<>(next.subList(0, Math.min(width, next.size())));
    }
    return goal.map(g -> g.stationOf(graph, stationCount));
  }

  private void expand(
      FilledStations state,
      int mostLoads,
      List<FilledStations> next,
      StateSet seen,
      BooleanSupplier stop) {
    double noise = random.nextDouble();
    for (int i = 0; i < graph.count; i++) {
      double chance = 1 - noise + noise * random.nextDouble();
      loads.setKey(i, (graph.time[i] + weight[i]) * chance);
    }
    int[] taken = {0};
    loads.list(
        state.done,
        state.stations + 1,
        cycle,
        (load, size, idle) -> {
          listed++;
          offer(state, load, size, idle, next, seen);
          boolean going = (++taken[0] & 1023) != 0 || !stop.getAsBoolean();
          return going && taken[0] < mostLoads && goal.isEmpty();
        });
  }

  private void offer(
      FilledStations state,
      int[] load,
      int size,
      int idle,
      List<FilledStations> next,
      StateSet seen) {
    long totalIdle = state.idle + idle;
    int stations = state.stations + 1;
    long[] done = state.doneWith(load, size);
    int count = 0;
    for (long word : done) {
      count += Long.bitCount(word);
    }
    if (count == graph.count) {
      goal = Optional.of(new FilledStations(done, stations, 0, 0, state));
      return;
    }
    if (totalIdle > mostIdle
        || rule.stationsFor(done) > stationCount - stations
        || !seen.addIfBetter(done, stations)) {
      return;
    }
    double worth = totalIdle;
    for (int i = 0; i < graph.count; i++) {
      worth -= FilledStations.isIn(done, i) ? weight[i] : 0;
    }
    next.add(new FilledStations(done, stations, totalIdle, worth, state));
  }

  /** Effort so far, in steps. */
  long effort() {
    return loads.visits() + STEPS_PER_LOAD * listed;
  }
}
