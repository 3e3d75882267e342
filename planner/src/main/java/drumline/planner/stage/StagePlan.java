package drumline.planner.stage;

import drumline.planner.model.Layout;
import drumline.planner.tables.ProblemTables;
import drumline.planner.tables.Steps;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Closes the gap of a small or strictly ordered problem by filling stage after stage: either finds
 * a shorter cycle or proves that there is none.
 */
public final class StagePlan {
  private static final long STEPS_PER_STATE = 500;
  private static final int MOST_TASKS = 63;
  private static final int LEAP_SHARE = 200;

  private StagePlan() {}

  /**
   * How far it came.
   *
   * @param best best layout known
   * @param lowerBoundMs no cycle can be shorter
   */
  public record Outcome(Optional<Layout> best, int lowerBoundMs) {}

  /** True if the method knows all rules of a problem. */
  public static boolean isSuited(ProblemTables tables) {
    boolean overlapsCut = false;
    for (boolean overlaps : tables.overlapsCut) {
      overlapsCut |= overlaps;
    }
    return tables.taskCount > 0
        && tables.taskCount <= MOST_TASKS
        && !tables.isCommonSpeed()
        && !overlapsCut
        && (tables.problem.pickUp().isEmpty() || tables.modesOf[tables.cutTask].length == 1);
  }

  /**
   * Searches between a bound and a layout.
   *
   * @param tables a problem that is suited
   * @param start best layout known
   * @param lowerBoundMs a cycle that is known to be no longer than the shortest
   * @param mostStates most sets of tasks to look at in each decision
   * @param found told of each better layout
   * @param stop asked now and then whether to give up
   */
  public static Outcome close(
      ProblemTables tables,
      Layout start,
      int lowerBoundMs,
      int mostStates,
      Consumer<Layout> found,
      BooleanSupplier stop) {
    StageProof proof =
        new StageProof(tables, mostStates, new Steps(STEPS_PER_STATE * mostStates), stop);
    Layout best = start;
    int low = lowerBoundMs;
    int cycle = best.cycleMs() - 1;
    while (low < best.cycleMs()) {
      StageProof.Verdict verdict = proof.decide(cycle);
      if (verdict == StageProof.Verdict.TOO_SHORT) {
        low = cycle + 1;
      } else {
        Optional<Layout> better =
            verdict == StageProof.Verdict.ENOUGH ? proof.layout() : Optional.empty();
        if (better.isEmpty() && verdict == StageProof.Verdict.ENOUGH && proof.isRefined()) {
          continue;
        }
        if (better.isEmpty()) {
          break;
        }
        best = better.orElseThrow();
        found.accept(best);
      }
      // after a gain try a good deal more at once, after a refusal the least gain
      int gap = best.cycleMs() - 1 - low;
      boolean gained = verdict == StageProof.Verdict.ENOUGH;
      cycle = best.cycleMs() - 1 - (gained ? Math.min(gap / 2, best.cycleMs() / LEAP_SHARE) : 0);
    }
    return new Outcome(Optional.of(best), low);
  }
}
