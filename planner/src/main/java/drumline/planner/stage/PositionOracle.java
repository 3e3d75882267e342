package drumline.planner.stage;

import drumline.planner.tables.Steps;
import java.util.HashMap;
import java.util.Map;

/**
 * Whether a stage of one kind can do a set of tasks in a time, by trying every order, slide and
 * mode that could be short enough; answers are kept.
 *
 * <p>Tasks that cut alone add their time to what the others need; without lags and grip nothing is
 * gained from them, for the others can close up where they were. Seats are not counted for them.
 */
final class PositionOracle {
  private final StageTables stage;
  private final Map<Long, Integer> within = new HashMap<>();
  private final Map<Long, Integer> above = new HashMap<>();
  private final Map<Long, Integer> banned = new HashMap<>();
  private final PositionSearch search;
  private final Steps steps;
  private long asked;
  private long unknown;

  private final PositionOracle[] elders;
  private final long[] alike;

  /**
   * An oracle for a kind of stage.
   *
   * @param stage the kind
   * @param steps steps for all searches together
   * @param elders oracles of other kinds, which are asked about tasks that have the same ways there
   */
  PositionOracle(StageTables stage, Steps steps, PositionOracle... elders) {
    this.stage = stage;
    this.steps = steps;
    this.elders = elders;
    alike = new long[elders.length];
    for (int e = 0; e < elders.length; e++) {
      alike[e] = stage.alike(elders[e].stage);
    }
    search = new PositionSearch(stage, steps);
  }

  /** Notes that a set cannot be done within a limit after all, for want of seats. */
  void ban(long set, int limitMs) {
    banned.merge(set, limitMs, Math::max);
  }

  /** True unless it is sure that the set cannot be done within a limit, in ms. */
  boolean fits(long set, int limitMs) {
    Integer refused = banned.get(set);
    if (refused != null && limitMs <= refused) {
      return false;
    }
    for (int e = 0; e < elders.length; e++) {
      if ((set & ~alike[e]) == 0) {
        return elders[e].fits(set, limitMs);
      }
    }
    Integer most = within.get(set);
    if (set == 0 || (most != null && most <= limitMs)) {
      return true;
    }
    Integer least = above.get(set);
    if (least != null && limitMs <= least) {
      return false;
    }
    long alone = alone(set);
    boolean split = alone != 0 && alone != set && !stage.hasLags(set);
    if (split && !fits(set & ~alone, limitMs - sumMs(alone))) {
      above.put(set, limitMs);
      return false;
    }
    if (split && stage.isPlain && standsAtAnEnd(alone, set & ~alone)) {
      within.put(set, limitMs);
      return true;
    }
    asked++;
    PositionSearch.Answer answer =
        isTooMuch(set, limitMs) ? PositionSearch.Answer.TOO_LONG : search.search(set, limitMs);
    if (answer == PositionSearch.Answer.TOO_LONG) {
      above.put(set, limitMs);
      return false;
    }
    unknown += answer == PositionSearch.Answer.UNKNOWN ? 1 : 0;
    boolean found = answer == PositionSearch.Answer.FITS;
    within.put(set, found ? search.madeMs() : limitMs);
    return true;
  }

  private long alone(long set) {
    long alone = 0;
    for (long rest = set; rest != 0; rest &= rest - 1) {
      int i = Long.numberOfTrailingZeros(rest);
      alone |= stage.alone[i] ? 1L << i : 0;
    }
    return alone;
  }

  private int sumMs(long set) {
    int sum = 0;
    for (long rest = set; rest != 0; rest &= rest - 1) {
      sum += stage.shortest[Long.numberOfTrailingZeros(rest)];
    }
    return sum;
  }

  /** True if each task that cuts alone can come before, or after, all others of the set. */
  private boolean standsAtAnEnd(long alone, long others) {
    for (long rest = alone; rest != 0; rest &= rest - 1) {
      int i = Long.numberOfTrailingZeros(rest);
      boolean follows = false;
      boolean leads = false;
      for (long other = others; other != 0; other &= other - 1) {
        int j = Long.numberOfTrailingZeros(other);
        follows |= stage.lag[j][i] >= 0;
        leads |= stage.lag[i][j] >= 0;
      }
      if (follows && leads) {
        return false;
      }
    }
    return true;
  }

  /** Loads that need no search: each slide with all that cuts alone; all less what pairs save. */
  private boolean isTooMuch(long set, int limitMs) {
    long sum = 0;
    long aloneMs = 0;
    double saved = 0;
    for (long left = set; left != 0; left &= left - 1) {
      int i = Long.numberOfTrailingZeros(left);
      sum += stage.shortest[i];
      aloneMs += stage.alone[i] ? stage.shortest[i] : 0;
      long withOthers = 0;
      for (long rest = set; rest != 0; rest &= rest - 1) {
        withOthers += stage.saving[i][Long.numberOfTrailingZeros(rest)];
      }
      saved += stage.slideCount == 2 ? Math.min(stage.shortest[i], withOthers) : withOthers;
    }
    if (aloneMs > limitMs || sum - saved / 2 > limitMs + 1e-6) {
      return true;
    }
    for (long left = set; left != 0; left &= left - 1) {
      int slide = stage.onlySlide[Long.numberOfTrailingZeros(left)];
      if (slide >= 0 && slideLoad(set, slide) + aloneMs > limitMs) {
        return true;
      }
    }
    return false;
  }

  private long slideLoad(long set, int slide) {
    long load = 0;
    for (long left = set; left != 0; left &= left - 1) {
      int i = Long.numberOfTrailingZeros(left);
      load += stage.onlySlide[i] == slide && !stage.alone[i] ? stage.shortest[i] : 0;
    }
    return load;
  }

  /** Sets for which the search was needed; beyond all bounds once the steps are spent. */
  long asked() {
    long sum = steps.areSpent() ? Integer.MAX_VALUE : asked;
    for (PositionOracle elder : elders) {
      sum += elder.asked;
    }
    return sum;
  }

  /** Sets for which the search was given up; they count as fitting. */
  long unknown() {
    return unknown;
  }

  /** Search that can give the schedule of a set. */
  PositionSearch search() {
    return search;
  }
}
