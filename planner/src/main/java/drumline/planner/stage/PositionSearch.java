package drumline.planner.stage;

import drumline.planner.model.Mode;
import drumline.planner.tables.ProblemTables;
import drumline.planner.tables.Steps;

/**
 * A schedule of one stage within a time: tasks are placed in the order of their starts, each as
 * early as the rules allow, on every slide and in every mode; what cannot end in time is cut off.
 */
final class PositionSearch {
  private static final int NEVER = Integer.MAX_VALUE;
  private static final long MOST_STEPS = 30_000;
  private final StageTables stage;
  private final Steps budget;
  private final ProblemTables tables;
  private final int[] task = new int[64];
  private final StageOption[] option = new StageOption[64];
  private final int[] start = new int[64];
  private final int[] end = new int[64];
  private final StageOption[][] ways = new StageOption[64][];
  private int count;
  private int limit;
  private long steps;
  private final boolean loaded;
  private boolean strict;

  /** How a search ended. */
  enum Answer {
    FITS,
    TOO_LONG,
    UNKNOWN
  }

  /**
   * A search in a kind of stage.
   *
   * @param budget steps for all searches together; once they are spent the answer is unknown
   */
  PositionSearch(StageTables stage, Steps budget) {
    this.budget = budget;
    this.stage = stage;
    tables = stage.tables;
    loaded = stage.hasLoads();
  }

  /**
   * Whether a set can be done within a limit, in ms, the bar feed included. If so, the schedule
   * found stands until the next search. Where only order matters for tasks that cut alone, they
   * take no seat.
   */
  Answer search(long set, int limitMs) {
    strict = false;
    return run(set, limitMs);
  }

  /** The same, with a seat for each task that cuts alone as well. */
  Answer searchWithSeats(long set, int limitMs) {
    strict = true;
    return run(set, limitMs);
  }

  private Answer run(long set, int limitMs) {
    count = 0;
    limit = limitMs;
    long most = Math.min(MOST_STEPS, budget.leftCount());
    steps = most;
    for (long rest = set; rest != 0; rest &= rest - 1) {
      int i = Long.numberOfTrailingZeros(rest);
      ways[i] = ways(i, set);
    }
    boolean found = next(set, 0);
    budget.take(most - Math.max(0, steps));
    return found ? Answer.FITS : steps > 0 ? Answer.TOO_LONG : Answer.UNKNOWN;
  }

  /** Ways worth trying: a slower one only for company. */
  private StageOption[] ways(int task, long set) {
    if (!strict && stage.isPlain && stage.alone[task]) {
      return new StageOption[] {stage.options[task][0]};
    }
    if (!stage.isSlowerOnlyForCompany) {
      return stage.options[task];
    }
    java.util.List<StageOption> list = new java.util.ArrayList<>();
    for (StageOption way : stage.options[task]) {
      boolean fastest = list.stream().noneMatch(w -> w.slide() == way.slide());
      if (fastest || (stage.partners[way.mode()] & set) != 0) {
        list.add(way);
      }
    }
    return list.toArray(StageOption[]::new);
  }

  private boolean next(long left, int from) {
    if (left == 0) {
      return true;
    }
    if (--steps <= 0 || !canEnd(left, from)) {
      return false;
    }
    for (long rest = left; rest != 0; rest &= rest - 1) {
      int i = Long.numberOfTrailingZeros(rest);
      if (isReady(i, left)) {
        for (StageOption way : ways[i]) {
          if (place(i, way, left, from)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private boolean isReady(int i, long left) {
    for (long rest = left; rest != 0; rest &= rest - 1) {
      if (stage.lag[Long.numberOfTrailingZeros(rest)][i] >= 0 && (rest & -rest) != 1L << i) {
        return false;
      }
    }
    return true;
  }

  private boolean place(int i, StageOption way, long left, int from) {
    if (!hasSeat(i, way.slide())) {
      return false;
    }
    int at = earliest(i, way, from);
    int until = at + way.durationMs();
    boolean mirrored = count > 0 && at == start[count - 1] && i < task[count - 1];
    if (mirrored || until + (i == tables.cutTask ? tables.barFeedMs() : 0) > limit) {
      return false;
    }
    task[count] = i;
    option[count] = way;
    start[count] = at;
    end[count] = until;
    count++;
    if (next(left & ~(1L << i), at)) {
      return true;
    }
    count--;
    return false;
  }

  private boolean hasSeat(int i, int slide) {
    int used = 0;
    if (!strict && stage.isPlain && stage.alone[i]) {
      return true;
    }
    for (int p = 0; p < count; p++) {
      if (!strict && stage.isPlain && stage.alone[task[p]]) {
        continue;
      }
      boolean same = option[p].slide() == slide;
      used += same ? 1 : 0;
      if (!same && stage.sameSlide[i][task[p]]) {
        return false;
      }
    }
    return used < tables.seatCount(slide);
  }

  /** Earliest start, no earlier than the task placed before. */
  private int earliest(int i, StageOption way, int from) {
    int at = Math.max(from, stage.release[way.mode()]);
    if (i == tables.cutTask) {
      at = Math.max(at, stage.gripMs());
    }
    for (int p = 0; p < count; p++) {
      int pause = stage.pause[option[p].mode()][way.mode()];
      if (option[p].slide() == way.slide()) {
        pause = Math.max(pause, tables.shiftMs(way.slide()));
      }
      pause = Math.max(pause, stage.lag[task[p]][i]);
      if (pause >= 0) {
        at = Math.max(at, end[p] + pause);
      }
    }
    return loaded ? carried(way, at) : at;
  }

  /** Earliest moment from which the spindle and the grip can carry the task as well. */
  private int carried(StageOption way, int from) {
    int at = from;
    while (true) {
      int spindle = stage.spindleShare[way.mode()];
      int grip = stage.gripShare[way.mode()];
      int firstEnd = NEVER;
      for (int p = 0; p < count; p++) {
        if (end[p] > at) {
          spindle += stage.spindleShare[option[p].mode()];
          grip += stage.gripShare[option[p].mode()];
          firstEnd = Math.min(firstEnd, end[p]);
        }
      }
      if (spindle <= Mode.FULL_PERMILLE && grip <= Mode.FULL_PERMILLE) {
        return at;
      }
      at = firstEnd;
    }
  }

  /** False if the tasks left cannot end in time, by slide and by what pairs can save. */
  private boolean canEnd(long left, int from) {
    long alone = 0;
    long sum = 0;
    double saved = 0;
    for (long rest = left; rest != 0; rest &= rest - 1) {
      int i = Long.numberOfTrailingZeros(rest);
      sum += stage.shortest[i];
      alone += stage.alone[i] ? stage.shortest[i] : 0;
      long with = 0;
      for (long other = left; other != 0; other &= other - 1) {
        with += stage.saving[i][Long.numberOfTrailingZeros(other)];
      }
      saved += stage.slideCount == 2 ? Math.min(with, stage.shortest[i]) : with;
    }
    int running = from;
    for (int p = 0; p < count; p++) {
      running = Math.max(running, end[p]);
    }
    // at most all that still runs can be beside the tasks left
    if (from + sum - saved / 2 > limit + 1e-6 || (alone > 0 && running + alone > limit)) {
      return false;
    }
    for (long rest = left; rest != 0; rest &= rest - 1) {
      int slide = stage.onlySlide[Long.numberOfTrailingZeros(rest)];
      if (slide >= 0 && slideEnd(left, slide, from) + alone > limit) {
        return false;
      }
    }
    return true;
  }

  private long slideEnd(long left, int slide, int from) {
    long at = from;
    for (int p = 0; p < count; p++) {
      if (option[p].slide() == slide) {
        at = Math.max(at, end[p]);
      }
    }
    for (long rest = left; rest != 0; rest &= rest - 1) {
      int i = Long.numberOfTrailingZeros(rest);
      at += stage.onlySlide[i] == slide && !stage.alone[i] ? stage.shortest[i] : 0;
    }
    return at;
  }

  /** Time of the schedule found, the bar feed included, in ms. */
  int madeMs() {
    int made = 0;
    for (int p = 0; p < count; p++) {
      made = Math.max(made, end[p] + (task[p] == tables.cutTask ? tables.barFeedMs() : 0));
    }
    return made;
  }

  /** Number of tasks in the schedule found. */
  int count() {
    return count;
  }

  /** A task of the schedule found, by its place in the order. */
  int taskAt(int place) {
    return task[place];
  }

  StageOption optionAt(int place) {
    return option[place];
  }

  int startAt(int place) {
    return start[place];
  }
}
