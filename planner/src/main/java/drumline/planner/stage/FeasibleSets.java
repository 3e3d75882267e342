package drumline.planner.stage;

import java.util.Arrays;
import java.util.function.BooleanSupplier;

/** Every set of tasks that one position can do within a time, with nothing left out in between. */
final class FeasibleSets {
  private long[] sets = new long[1024];
  private int count;
  private boolean complete = true;

  FeasibleSets(
      StageTables stage,
      PositionOracle oracle,
      long among,
      int limitMs,
      int most,
      BooleanSupplier stop) {
    new SetListing(stage, among)
        .list(
            (set, parentMs) -> {
              complete &= oracle.asked() < most;
              return complete && oracle.fits(set, limitMs) ? 0 : -1;
            },
            (set, timeMs) -> {
              complete &= count < most && ((count & 255) != 0 || !stop.getAsBoolean());
              add(set);
            });
  }

  private void add(long set) {
    if (count == sets.length) {
      sets = Arrays.copyOf(sets, 2 * count);
    }
    sets[count++] = set;
  }

  /** False if there were too many to list. */
  boolean isComplete() {
    return complete;
  }

  /** The sets as bits. */
  long[] sets() {
    return Arrays.copyOf(sets, count);
  }
}
