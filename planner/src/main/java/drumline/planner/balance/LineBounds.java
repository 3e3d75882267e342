package drumline.planner.balance;

import java.util.Arrays;

/**
 * Lower bounds on the cycle without search: the longest task; all work shared evenly; the k·M + 1
 * longest tasks, of which k + 1 must meet in one station.
 *
 * <p>Source: A. Scholl, Balancing and Sequencing of Assembly Lines, chapter 2 (from memory).
 */
final class LineBounds {
  private LineBounds() {}

  static int cycle(TaskGraph graph, TaskGraph reversed, int stationCount) {
    int[] sorted = graph.time.clone();
    Arrays.sort(sorted);
    int n = sorted.length;
    long bound = n == 0 ? 0 : sorted[n - 1];
    bound = Math.max(bound, -Math.floorDiv(-graph.totalTime, (long) stationCount));
    for (int k = 1; k * stationCount + 1 <= n; k++) {
      long sum = 0;
      for (int i = 0; i <= k; i++) {
        sum += sorted[n - 1 - (k * stationCount - i)];
      }
      bound = Math.max(bound, sum);
    }
    int cycle = Math.toIntExact(bound);
    while (!hasWindows(graph, reversed, cycle, stationCount)) {
      cycle++;
    }
    return cycle;
  }

  /** True if each task's earliest station is not behind its latest. */
  private static boolean hasWindows(
      TaskGraph graph, TaskGraph reversed, int cycle, int stationCount) {
    int[] latest = graph.latestStations(cycle, stationCount);
    int[] fromEnd = reversed.latestStations(cycle, stationCount);
    for (int i = 0; i < graph.count; i++) {
      if (stationCount + 1 - fromEnd[i] > latest[i]) {
        return false;
      }
    }
    return true;
  }
}
