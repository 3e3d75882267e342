package drumline.planner.bound;

import drumline.planner.model.Mode;
import drumline.planner.model.PickUp;
import drumline.planner.tables.ProblemTables;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Lower bounds on the cycle that need no search; each in ms with the index.
 *
 * @param longestTaskMs the longest task at its fastest, with run-up, grip and bar feed
 * @param slideLoadMs work that only some slides can do, shared evenly among them
 * @param drumLoadMs all work less the most that pairs can save, shared evenly among positions
 * @param chainMs tasks that follow one another in so few positions that some must share one
 * @param roundTripMs the pick-up spindle's way with the fastest cut-off and the back-working that
 *     cannot be done in the drum
 */
public record CycleBound(
    int longestTaskMs, int slideLoadMs, int drumLoadMs, int chainMs, int roundTripMs) {

  /** Bounds of a problem. */
  public static CycleBound of(ProblemTables tables) {
    return new CycleBound(
        longestTask(tables),
        slideLoad(tables),
        DrumLoad.boundMs(tables),
        ChainLoad.boundMs(tables),
        roundTrip(tables));
  }

  /** The strongest of the bounds, in ms. */
  public int cycleMs() {
    return IntStream.of(longestTaskMs, slideLoadMs, drumLoadMs, chainMs, roundTripMs)
        .max()
        .orElse(0);
  }

  private static int longestTask(ProblemTables tables) {
    int longest = 0;
    for (int i = 0; i < tables.taskCount; i++) {
      if (drumOnly(tables, i)) {
        longest = Math.max(longest, fastestEnd(tables, i) + tables.problem.indexMs());
      }
    }
    return longest;
  }

  private static int fastestEnd(ProblemTables tables, int task) {
    int best = Integer.MAX_VALUE;
    for (int m : tables.modesOf[task]) {
      Mode mode = tables.mode(task, m);
      int start = tables.releaseMs(0, mode);
      int tail = 0;
      if (task == tables.cutTask) {
        start = Math.max(start, tables.gripMs());
        tail = tables.barFeedMs();
      }
      best = Math.min(best, start + mode.durationMs() + tail);
    }
    return best == Integer.MAX_VALUE ? 0 : best;
  }

  private static int slideLoad(ProblemTables tables) {
    int best = 0;
    for (int i = 0; i < tables.taskCount; i++) {
      if (drumOnly(tables, i)) {
        int[] slides = tables.slidesOf[i];
        long load = 0;
        for (int j = 0; j < tables.taskCount; j++) {
          load +=
              tables.slidesOf[j].length > 0 && isSubset(tables.slidesOf[j], slides)
                  ? tables.shortestMs(j)
                  : 0;
        }
        best = Math.max(best, ceilDiv(load, slides.length) + tables.problem.indexMs());
      }
    }
    return best;
  }

  private static int roundTrip(ProblemTables tables) {
    if (tables.problem.pickUp().isEmpty()) {
      return 0;
    }
    PickUp pickUp = tables.problem.pickUp().orElseThrow();
    long total = pickUp.carryMs() + (long) tables.shortestMs(tables.cutTask);
    int backSlides =
        (int) Arrays.stream(tables.stageOfSlide).filter(s -> s == tables.drumCount).count();
    long work = 0;
    for (int i = 0; i < tables.taskCount; i++) {
      work += tables.slidesOf[i].length > 0 && backOnly(tables, i) ? tables.shortestMs(i) : 0;
    }
    total += backSlides == 0 ? 0 : ceilDiv(work, backSlides);
    return ceilDiv(total, pickUp.spindleCount());
  }

  /** True if a task can stand in the drum only. */
  static boolean drumOnly(ProblemTables tables, int task) {
    return tables.slidesOf[task].length > 0
        && Arrays.stream(tables.slidesOf[task])
            .allMatch(s -> tables.stageOfSlide[s] < tables.drumCount);
  }

  private static boolean backOnly(ProblemTables tables, int task) {
    return Arrays.stream(tables.slidesOf[task])
        .allMatch(s -> tables.stageOfSlide[s] == tables.drumCount);
  }

  private static boolean isSubset(int[] part, int[] whole) {
    return Arrays.stream(part).allMatch(s -> Arrays.stream(whole).anyMatch(t -> t == s));
  }

  static int ceilDiv(long dividend, long divisor) {
    return Math.toIntExact(-Math.floorDiv(-dividend, divisor));
  }
}
