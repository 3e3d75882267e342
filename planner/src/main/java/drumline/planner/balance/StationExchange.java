package drumline.planner.balance;

import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * Improves a sharing by moving one task to another station, or two tasks between two, where the
 * order allows it; worse ones are taken now and then, the less likely the longer it runs.
 */
final class StationExchange {
  private final TaskGraph graph;
  private final int[][] prior;
  private final SplittableRandom random;
  private final int[] station;
  private final long[] load;
  private final int stationCount;

  StationExchange(
      TaskGraph graph, TaskGraph reversed, int stationCount, int[] start, SplittableRandom random) {
    this.graph = graph;
    prior = reversed.next;
    this.stationCount = stationCount;
    this.random = random;
    station = start.clone();
    load = new long[stationCount + 1];
    for (int i = 0; i < graph.count; i++) {
      load[station[i]] += graph.time[i];
    }
  }

  /** Searches for a sharing within a cycle; true if it was found. */
  boolean search(int cycle, int stepCount, BooleanSupplier stop) {
    double warm = Math.max(0.5, cycle * 0.01);
    double cold = Math.max(0.05, cycle * 0.00005);
    long over = 0;
    for (int s = 1; s <= stationCount; s++) {
      over += Math.max(0, load[s] - cycle);
    }
    double heat = warm;
    double cooling = Math.pow(cold / warm, 1024.0 / Math.max(1024, stepCount));
    for (int step = 0; step < stepCount && over > 0; step++) {
      if ((step & 1023) == 1023) {
        heat *= cooling;
        if (stop.getAsBoolean()) {
          return false;
        }
      }
      over += random.nextInt(3) == 0 ? move(cycle, heat) : swap(cycle, heat);
    }
    return over == 0;
  }

  private long move(int cycle, double heat) {
    int task = random.nextInt(graph.count);
    int to = 1 + random.nextInt(stationCount);
    int from = station[task];
    if (to == from || !canStand(task, to, -1, 0)) {
      return 0;
    }
    long change = change(from, to, graph.time[task], cycle);
    if (change > 0 && random.nextDouble() >= Math.exp(-change / heat)) {
      return 0;
    }
    station[task] = to;
    load[from] -= graph.time[task];
    load[to] += graph.time[task];
    return change;
  }

  private long swap(int cycle, double heat) {
    int first = random.nextInt(graph.count);
    int second = random.nextInt(graph.count);
    int from = station[first];
    int to = station[second];
    if (from == to || !canStand(first, to, second, from) || !canStand(second, from, first, to)) {
      return 0;
    }
    long time = (long) graph.time[first] - graph.time[second];
    long change = change(from, to, time, cycle);
    if (change > 0 && random.nextDouble() >= Math.exp(-change / heat)) {
      return 0;
    }
    station[first] = to;
    station[second] = from;
    load[from] -= time;
    load[to] += time;
    return change;
  }

  private long change(int from, int to, long time, int cycle) {
    long before = Math.max(0, load[from] - cycle) + Math.max(0, load[to] - cycle);
    return Math.max(0, load[from] - time - cycle) + Math.max(0, load[to] + time - cycle) - before;
  }

  /** True if the order lets a task stand in a station while another one stands elsewhere. */
  private boolean canStand(int task, int at, int other, int otherAt) {
    for (int before : prior[task]) {
      if ((before == other ? otherAt : station[before]) > at) {
        return false;
      }
    }
    for (int after : graph.next[task]) {
      if ((after == other ? otherAt : station[after]) < at) {
        return false;
      }
    }
    return true;
  }

  /** By task: its station. */
  int[] stationOf() {
    return station.clone();
  }
}
