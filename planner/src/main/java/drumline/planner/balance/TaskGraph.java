package drumline.planner.balance;

import java.util.ArrayList;
import java.util.List;

/** Times and order of tasks as arrays, in one direction along the stations. */
final class TaskGraph {
  final int count;
  final int[] time;
  final int[][] next;
  final int[] before;

  /** By task: all that come after it, as a set of bits, and the sum of their times. */
  final long[][] after;

  final long[] afterTime;
  final long totalTime;
  final boolean isReversed;
  private final List<int[]> arcs;

  TaskGraph(int[] time, List<int[]> arcs, boolean isReversed) {
    this.time = time;
    this.arcs = arcs;
    this.isReversed = isReversed;
    count = time.length;
    before = new int[count];
    after = new long[count][(count + 63) / 64];
    afterTime = new long[count];
    List<List<Integer>> lists = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      lists.add(new ArrayList<>());
    }
    for (int[] arc : arcs) {
      lists.get(arc[0]).add(arc[1]);
      before[arc[1]]++;
    }
    next =
        lists.stream()
            .map(l -> l.stream().distinct().mapToInt(Integer::intValue).toArray())
            .toArray(int[][]::new);
    java.util.Arrays.fill(before, 0);
    for (int[] list : next) {
      for (int j : list) {
        before[j]++;
      }
    }
    long total = 0;
    boolean[] known = new boolean[count];
    for (int i = 0; i < count; i++) {
      close(i, known);
      total += time[i];
    }
    totalTime = total;
  }

  private void close(int task, boolean[] known) {
    if (known[task]) {
      return;
    }
    known[task] = true;
    for (int j : next[task]) {
      close(j, known);
      after[task][j >> 6] |= 1L << (j & 63);
      for (int w = 0; w < after[task].length; w++) {
        after[task][w] |= after[j][w];
      }
    }
    for (int j = 0; j < count; j++) {
      afterTime[task] += follows(task, j) ? time[j] : 0;
    }
  }

  /** True if the second comes after the first. */
  boolean follows(int first, int second) {
    return (after[first][second >> 6] >>> (second & 63) & 1) == 1;
  }

  /** The same line walked from its end. */
  TaskGraph reversed() {
    List<int[]> turned = arcs.stream().map(a -> new int[] {a[1], a[0]}).toList();
    return new TaskGraph(time, turned, !isReversed);
  }

  /** Latest station (1…M) of each task at a cycle. */
  int[] latestStations(int cycle, int stationCount) {
    int[] latest = new int[count];
    for (int i = 0; i < count; i++) {
      latest[i] =
          stationCount
              + 1
              - (int) -Math.floorDiv(-(time[i] + afterTime[i]), (long) Math.max(1, cycle));
      latest[i] = Math.min(latest[i], stationCount);
    }
    return latest;
  }
}
