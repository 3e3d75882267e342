package drumline.planner.balance;

import org.jspecify.annotations.Nullable;

/** A number of stations filled, one after the other. */
final class FilledStations {
  final long[] done;
  final int stations;
  final long idle;
  final double worth;
  private final @Nullable FilledStations parent;

  /**
   * Stations filled.
   *
   * @param done tasks done, as a set of bits
   * @param stations stations filled
   * @param idle time not used in them
   * @param worth less is more promising
   * @param parent the same without the last station; null for none filled
   */
  FilledStations(
      long[] done, int stations, long idle, double worth, @Nullable FilledStations parent) {
    this.done = done;
    this.stations = stations;
    this.idle = idle;
    this.worth = worth;
    this.parent = parent;
  }

  /** None filled. */
  static FilledStations none(TaskGraph graph) {
    return new FilledStations(new long[(graph.count + 63) / 64], 0, 0, 0, null);
  }

  /** The tasks done with those of one more load. */
  long[] doneWith(int[] load, int size) {
    long[] all = done.clone();
    for (int p = 0; p < size; p++) {
      all[load[p] >> 6] |= 1L << (load[p] & 63);
    }
    return all;
  }

  /** By task: station 1…M. */
  int[] stationOf(TaskGraph graph, int stationCount) {
    int[] station = new int[graph.count];
    FilledStations state = this;
    FilledStations before = parent;
    while (before != null) {
      int number = graph.isReversed ? stationCount + 1 - state.stations : state.stations;
      for (int i = 0; i < graph.count; i++) {
        if (isIn(state.done, i) && !isIn(before.done, i)) {
          station[i] = number;
        }
      }
      state = before;
      before = state.parent;
    }
    return station;
  }

  /** True if a set of bits holds a task. */
  static boolean isIn(long[] set, int task) {
    return (set[task >> 6] >>> (task & 63) & 1) == 1;
  }
}
