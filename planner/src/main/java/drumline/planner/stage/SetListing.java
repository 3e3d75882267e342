package drumline.planner.stage;

import drumline.planner.tables.ProblemTables;

/** Lists sets of tasks of one position, each a task larger than one listed before. */
final class SetListing {
  /** Judges a set. */
  interface Judge {
    /**
     * Time of a set, in ms, given the time of the set without its last task; −1 if it is too long.
     */
    int timeMs(long set, int parentMs);
  }

  /** Takes a set that has nothing left out in between. */
  interface Taker {
    void take(long set, int timeMs);
  }

  private final StageTables stage;
  private final long among;
  private final int[] order;
  private final long[] before;
  private final long[] after;
  private final long[] apart;

  /** A listing of the sets among some tasks, as bits. */
  SetListing(StageTables stage, long among) {
    this.stage = stage;
    this.among = among;
    ProblemTables tables = stage.tables;
    int n = tables.taskCount;
    order = TopologicalOrder.of(tables);
    before = new long[n];
    after = new long[n];
    apart = new long[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        before[i] |= tables.precedes[j][i] ? 1L << j : 0;
        after[i] |= tables.precedes[i][j] ? 1L << j : 0;
        apart[i] |= stage.apart[i][j] ? 1L << j : 0;
      }
    }
  }

  void list(Judge judge, Taker taker) {
    grow(0, 0, 0, 0, 0, judge, taker);
  }

  private void grow(
      int from, long set, long banned, long follows, int timeMs, Judge judge, Taker taker) {
    if (set != 0 && isConvex(set, follows)) {
      taker.take(set, timeMs);
    }
    for (int p = from; p < order.length; p++) {
      int i = order[p];
      long bit = 1L << i;
      if ((among & bit) != 0 && stage.options[i].length > 0 && (banned & bit) == 0) {
        int time = judge.timeMs(set | bit, timeMs);
        if (time >= 0) {
          grow(p + 1, set | bit, banned | apart[i], follows | after[i], time, judge, taker);
        }
      }
    }
  }

  /** True if no listed task outside lies between two inside. */
  private boolean isConvex(long set, long follows) {
    for (long rest = set; rest != 0; rest &= rest - 1) {
      int i = Long.numberOfTrailingZeros(rest);
      if ((before[i] & follows & ~set & among) != 0) {
        return false;
      }
    }
    return true;
  }
}
