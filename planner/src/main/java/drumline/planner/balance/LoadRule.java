package drumline.planner.balance;

/**
 * Leaves out loads that another load beats, and states that need too many stations.
 *
 * <p>A load is beaten if one of its tasks can be exchanged for an open task outside it that is at
 * least as long and opens at least as much (Jackson's rule). Stations still needed: all work left;
 * tasks longer than half a cycle; tasks longer than a third.
 *
 * <p>Source: A. Scholl, Balancing and Sequencing of Assembly Lines, chapters 2 and 4 (from memory).
 */
final class LoadRule {
  private final TaskGraph graph;
  private final int cycle;
  private final StationLoads loads;
  private final int[][] better;
  private final int[] sixths;
  private final int[] halves;

  LoadRule(TaskGraph graph, int cycle, StationLoads loads) {
    this.graph = graph;
    this.cycle = cycle;
    this.loads = loads;
    int n = graph.count;
    better = new int[n][];
    halves = new int[n];
    sixths = new int[n];
    for (int i = 0; i < n; i++) {
      int task = i;
      better[i] = java.util.stream.IntStream.range(0, n).filter(j -> beats(j, task)).toArray();
      halves[i] = weight(graph.time[i], 2);
      sixths[i] = thirds(graph.time[i]);
    }
  }

  private boolean beats(int better, int task) {
    if (better == task
        || graph.time[better] < graph.time[task]
        || graph.follows(task, better)
        || graph.follows(better, task)) {
      return false;
    }
    boolean same = graph.time[better] == graph.time[task];
    for (int w = 0; w < graph.after[task].length; w++) {
      if ((graph.after[task][w] & ~graph.after[better][w]) != 0) {
        return false;
      }
      same &= graph.after[task][w] == graph.after[better][w];
    }
    return !same || better < task;
  }

  /** 2 for a task longer than half a cycle, 1 for just half. */
  private int weight(int time, int parts) {
    long scaled = (long) time * parts;
    return scaled > cycle ? 2 : scaled == cycle ? 1 : 0;
  }

  /** Sixths of a station: 6, 4, 3, 2 for tasks above 2/3, at 2/3, above 1/3, at 1/3 of a cycle. */
  private int thirds(int time) {
    long scaled = (long) time * 3;
    if (scaled > 2L * cycle) {
      return 6;
    }
    if (scaled == 2L * cycle) {
      return 4;
    }
    return scaled > cycle ? 3 : scaled == cycle ? 2 : 0;
  }

  /** True if another load of the same station is at least as good. */
  boolean isBeaten(long[] done, int[] load, int size, int idle) {
    for (int p = 0; p < size; p++) {
      int task = load[p];
      for (int other : better[task]) {
        boolean outside = (done[other >> 6] >>> (other & 63) & 1) == 0 && !loads.isLoaded(other);
        if (outside && loads.isOpen(other) && graph.time[other] - graph.time[task] <= idle) {
          return true;
        }
      }
    }
    return false;
  }

  /** Stations that the tasks left need at least. */
  int stationsFor(long[] done) {
    long time = 0;
    int half = 0;
    int sixth = 0;
    for (int i = 0; i < graph.count; i++) {
      if ((done[i >> 6] >>> (i & 63) & 1) == 0) {
        time += graph.time[i];
        half += halves[i];
        sixth += sixths[i];
      }
    }
    long byTime = -Math.floorDiv(-time, (long) Math.max(1, cycle));
    return (int) Math.max(byTime, Math.max((half + 1) / 2, (sixth + 5) / 6));
  }
}
