package drumline.planner.balance;

/** Lists every full load of the next station: no further task would fit. */
final class StationLoads {
  /** Takes a full load; false ends the listing. */
  interface Taker {
    boolean take(int[] load, int size, int idle);
  }

  private final TaskGraph graph;
  private final int[] open;
  private final int[] degree;
  private final int[] load;
  private final boolean[] inLoad;
  private final int[] latest;
  private final double[] key;
  private int size;
  private int openCount;
  private int station;
  private int dueCount;
  private boolean going;
  private long visits;
  private Taker taker;

  StationLoads(TaskGraph graph, int[] latest) {
    this.graph = graph;
    this.latest = latest;
    key = new double[graph.count];
    for (int i = 0; i < graph.count; i++) {
      key[i] = graph.time[i];
    }
    open = new int[graph.count];
    degree = new int[graph.count];
    load = new int[graph.count];
    inLoad = new boolean[graph.count];
    taker = (l, s, i) -> false;
  }

  /**
   * Lists the loads.
   *
   * @param done tasks done, as a set of bits
   * @param newStation number of the station, from 1
   * @param cycle time of a station
   * @param newTaker takes each load
   * @return false if the taker ended the listing
   */
  boolean list(long[] done, int newStation, int cycle, Taker newTaker) {
    station = newStation;
    taker = newTaker;
    System.arraycopy(graph.before, 0, degree, 0, graph.count);
    int due = 0;
    for (int i = 0; i < graph.count; i++) {
      if (isIn(done, i)) {
        for (int j : graph.next[i]) {
          degree[j]--;
        }
      } else if (latest[i] <= newStation) {
        due++;
      }
    }
    openCount = 0;
    for (int i = 0; i < graph.count; i++) {
      if (degree[i] == 0 && !isIn(done, i)) {
        open[openCount++] = i;
      }
    }
    sortByKey();
    size = 0;
    dueCount = due;
    going = true;
    fill(0, cycle);
    return going;
  }

  private void sortByKey() {
    for (int a = 1; a < openCount; a++) {
      int task = open[a];
      int b = a - 1;
      while (b >= 0 && key[open[b]] < key[task]) {
        open[b + 1] = open[b];
        b--;
      }
      open[b + 1] = task;
    }
  }

  private static boolean isIn(long[] set, int task) {
    return (set[task >> 6] >>> (task & 63) & 1) == 1;
  }

  private void fill(int from, int left) {
    visits++;
    boolean full = true;
    int oldCount = openCount;
    for (int p = from; p < oldCount && going; p++) {
      int task = open[p];
      if (graph.time[task] <= left) {
        full = false;
        add(task);
        fill(p + 1, left - graph.time[task]);
        remove(task);
        openCount = oldCount;
      }
    }
    if (full && going && dueCount == 0 && isMaximal(from, left)) {
      going = taker.take(load, size, left);
    }
  }

  private boolean isMaximal(int from, int left) {
    for (int p = 0; p < from; p++) {
      if (!inLoad[open[p]] && graph.time[open[p]] <= left) {
        return false;
      }
    }
    return true;
  }

  private void add(int task) {
    inLoad[task] = true;
    load[size++] = task;
    dueCount -= latest[task] <= station ? 1 : 0;
    for (int j : graph.next[task]) {
      if (--degree[j] == 0) {
        open[openCount++] = j;
      }
    }
  }

  private void remove(int task) {
    inLoad[task] = false;
    size--;
    dueCount += latest[task] <= station ? 1 : 0;
    for (int j : graph.next[task]) {
      degree[j]++;
    }
  }

  /** Steps of all listings so far. */
  long visits() {
    return visits;
  }

  /** Lists tasks with a higher key first, for as long as it is not set again. */
  void setKey(int task, double value) {
    key[task] = value;
  }

  /** True if a task waits only for tasks done or in the load. */
  boolean isOpen(int task) {
    return degree[task] == 0;
  }

  /** True if a task is in the load. */
  boolean isLoaded(int task) {
    return inLoad[task];
  }
}
