package drumline.planner.stage;

import drumline.planner.bound.PairSavings;
import drumline.planner.tables.ProblemTables;
import drumline.planner.tables.Steps;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;

/**
 * A lower bound on the cycle from every set of tasks that can share a position.
 *
 * <p>Tasks that cut alone add their time to their position whatever else it does, so only the
 * others are put into sets R, each with its shortest time T(R). With prices w of the tasks and μ =
 * max(0, max (w(R) − T(R))) over all sets, N positions need together at least Σ w − N·μ for these
 * and H for those that cut alone: cycle ≥ (Σ w − N·μ + H) / N. The best prices come from covering
 * the tasks with N sets in least time by linear programming. Lags and the grip are left out of T.
 */
public final class ColumnBound {
  private static final long STEPS_PER_SET = 500;
  private final ProblemTables tables;
  private final List<Long> sets = new ArrayList<>();
  private final List<Double> times = new ArrayList<>();
  private final long counted;
  private final long together;
  private final int mostSets;
  private final Steps steps;
  private final BooleanSupplier stop;

  private ColumnBound(
      ProblemTables tables,
      List<StageTables> stages,
      int horizonMs,
      int mostSets,
      BooleanSupplier stop) {
    this.tables = tables;
    this.mostSets = mostSets;
    steps = new Steps(STEPS_PER_SET * mostSets);
    this.stop = stop;
    long drumOnly = 0;
    long mixed = 0;
    for (int i = 0; i < tables.taskCount; i++) {
      boolean canLeave =
          tables.stageCount > tables.drumCount && tables.canStand(i, tables.drumCount);
      drumOnly |= canLeave ? 0 : 1L << i;
      for (StageTables stage : stages) {
        mixed |= stage.options[i].length > 0 && !stage.alone[i] ? 1L << i : 0;
      }
    }
    counted = drumOnly;
    together = mixed;
    for (StageTables stage : stages) {
      list(stage, horizonMs - tables.problem.indexMs());
    }
  }

  /**
   * The bound on the cycle with the index, in ms.
   *
   * @param tables the problem, at most 63 tasks
   * @param horizonMs a cycle that is known to suffice
   * @param mostSets most sets to list
   * @param stop asked now and then whether to give up
   * @return empty if there are too many sets, or too many tasks
   */
  public static OptionalInt findCycleMs(
      ProblemTables tables, int horizonMs, int mostSets, BooleanSupplier stop) {
    if (tables.taskCount > 63 || tables.taskCount == 0) {
      return OptionalInt.empty();
    }
    PairSavings savings = new PairSavings(tables);
    StageKinds kinds = new StageKinds(tables);
    List<StageTables> stages = new ArrayList<>();
    for (int k = 0; k < kinds.count(); k++) {
      if (kinds.stage(k) < tables.drumCount) {
        stages.add(new StageTables(tables, savings, kinds.stage(k)).withoutLags());
      }
    }
    ColumnBound bound = new ColumnBound(tables, stages, horizonMs, mostSets, stop);
    return bound.isComplete() ? OptionalInt.of(bound.cycleMs(stages)) : OptionalInt.empty();
  }

  private boolean isComplete() {
    return sets.size() < mostSets && !steps.areSpent() && !stop.getAsBoolean();
  }

  private void list(StageTables stage, int limitMs) {
    PositionSearch search = new PositionSearch(stage, steps);
    SetListing listing = new SetListing(stage, together & counted);
    listing.list(
        (set, parentMs) -> {
          int time = isComplete() ? shortestMs(search, set, parentMs, limitMs) : Integer.MAX_VALUE;
          return time <= limitMs ? time : -1;
        },
        (set, time) -> {
          sets.add(set);
          times.add((double) time);
        });
  }

  /**
   * Shortest time.
   *
   * @param search tries a limit
   * @param set tasks as bits
   * @param leastMs a time that it cannot be below
   * @param limitMs times above are of no interest
   * @return the time, or less where the search was given up; above the limit if too long
   */
  private static int shortestMs(PositionSearch search, long set, int leastMs, int limitMs) {
    int found = limitMs + 1;
    int least = leastMs;
    int trial = limitMs;
    while (least < found) {
      PositionSearch.Answer answer = search.search(set, trial);
      if (answer == PositionSearch.Answer.UNKNOWN) {
        return least;
      }
      if (answer == PositionSearch.Answer.TOO_LONG) {
        least = trial + 1;
      } else {
        found = search.madeMs();
      }
      trial = found - 1;
    }
    return found;
  }

  private int cycleMs(List<StageTables> stages) {
    int[] rowOf = new int[tables.taskCount];
    int rows = 0;
    double alone = 0;
    for (int i = 0; i < tables.taskCount; i++) {
      rowOf[i] = -1;
      if ((counted & together & 1L << i) != 0) {
        rowOf[i] = rows++;
      } else if ((counted & 1L << i) != 0) {
        alone += shortest(stages, i);
      }
    }
    long[] packed = new long[sets.size()];
    double[] cost = new double[packed.length];
    for (int s = 0; s < packed.length; s++) {
      for (long rest = sets.get(s); rest != 0; rest &= rest - 1) {
        packed[s] |= 1L << rowOf[Long.numberOfTrailingZeros(rest)];
      }
      cost[s] = times.get(s);
    }
    double penalty = 4.0 * tables.horizonMs();
    double[] price = new CoverProgram(rows, packed, cost, tables.drumCount, penalty).prices();
    double over = 0;
    for (int s = 0; s < packed.length; s++) {
      over = Math.max(over, CoverProgram.weigh(price, packed[s]) - cost[s]);
    }
    double sum = 0;
    for (double p : price) {
      sum += p;
    }
    double working = (sum - tables.drumCount * over + alone) / tables.drumCount;
    return (int) Math.ceil(working - 1e-3) + tables.problem.indexMs();
  }

  private static int shortest(List<StageTables> stages, int task) {
    int shortest = Integer.MAX_VALUE;
    for (StageTables stage : stages) {
      if (stage.options[task].length > 0) {
        shortest = Math.min(shortest, stage.shortest[task]);
      }
    }
    return shortest == Integer.MAX_VALUE ? 0 : shortest;
  }
}
