package drumline.planner.bound;

import drumline.planner.model.Mode;
import drumline.planner.model.PairRule;
import drumline.planner.tables.ProblemTables;

/**
 * What two tasks in one position can save at most by cutting together, against their shortest times
 * one after the other.
 *
 * <p>At modes a and b that agree, with o = min(d_a, d_b) the longest overlap in ms and D the
 * shortest times: saving = o·(D_i/d_a + D_j/d_b − 1) where two slides work in the position, and
 * o·(D_i/d_a + D_j/d_b)/2 where three or more do, since there the overlaps of three tasks are
 * counted in three pairs; the best modes count, rounded up. Pairs that must not share, must not
 * overlap, follow one another or overload spindle or collet save nothing.
 */
public final class PairSavings {
  private final ProblemTables tables;
  private final boolean[][] never;

  /** Savings of a problem. */
  public PairSavings(ProblemTables tables) {
    this.tables = tables;
    int n = tables.taskCount;
    never = new boolean[n][n];
    for (PairRule.Kind kind :
        new PairRule.Kind[] {PairRule.Kind.MUST_NOT_SHARE, PairRule.Kind.MUST_NOT_OVERLAP}) {
      for (int[] pair : tables.pairs(kind)) {
        never[pair[0]][pair[1]] = true;
        never[pair[1]][pair[0]] = true;
      }
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        never[i][j] |= tables.precedes[i][j] || tables.precedes[j][i] || endsBeforeCut(i, j);
      }
    }
  }

  private boolean endsBeforeCut(int first, int second) {
    return (first == tables.cutTask && !tables.overlapsCut[second])
        || (second == tables.cutTask && !tables.overlapsCut[first]);
  }

  /**
   * Most that two tasks can save in a stage, in ms, 0 if they cannot cut together there.
   *
   * @param first a task
   * @param second another task
   * @param stage stage counted from 0
   */
  public int savingMs(int first, int second, int stage) {
    if (first == second || never[first][second]) {
      return 0;
    }
    int slideCount = slidesIn(stage);
    long best = 0;
    for (int a : tables.modesOf[first]) {
      for (int b : tables.modesOf[second]) {
        if (agree(first, a, second, b, stage)) {
          best = Math.max(best, savingAt(first, a, second, b, slideCount));
        }
      }
    }
    return Math.toIntExact(best);
  }

  private long savingAt(int first, int a, int second, int b, int slideCount) {
    long durationA = tables.mode(first, a).durationMs();
    long durationB = tables.mode(second, b).durationMs();
    double overlap = Math.min(durationA, durationB);
    double work =
        (double) tables.shortestMs(first) / durationA
            + (double) tables.shortestMs(second) / durationB;
    double saving = slideCount <= 2 ? overlap * (work - 1) : overlap * work / 2;
    return (long) Math.ceil(saving - 1e-9);
  }

  private boolean agree(int first, int a, int second, int b, int stage) {
    Mode modeA = tables.mode(first, a);
    Mode modeB = tables.mode(second, b);
    return tables.spindle(stage).canOverlap(modeA, modeB)
        && modeA.spindleSharePermille() + modeB.spindleSharePermille() <= Mode.FULL_PERMILLE
        && modeA.gripSharePermille() + modeB.gripSharePermille() <= Mode.FULL_PERMILLE
        && onDifferentSlides(first, a, second, b, stage);
  }

  private boolean onDifferentSlides(int first, int a, int second, int b, int stage) {
    for (int s : tables.slidesOf[first]) {
      for (int t : tables.slidesOf[second]) {
        if (s != t
            && tables.stageOfSlide[s] == stage
            && tables.stageOfSlide[t] == stage
            && tables.allowed[first][s][a]
            && tables.allowed[second][t][b]) {
          return true;
        }
      }
    }
    return false;
  }

  /** Number of slides that stand in a stage. */
  public int slidesIn(int stage) {
    int count = 0;
    for (int s : tables.stageOfSlide) {
      count += s == stage ? 1 : 0;
    }
    return count;
  }

  /** True if no other task can be in cut with this one in a stage, whatever their modes. */
  public boolean cutsAlone(int task, int stage) {
    for (int other = 0; other < tables.taskCount; other++) {
      if (other != task && tables.canStand(other, stage) && canCutTogether(task, other, stage)) {
        return false;
      }
    }
    return true;
  }

  private boolean canCutTogether(int first, int second, int stage) {
    if (never[first][second]) {
      return false;
    }
    for (int a : tables.modesOf[first]) {
      for (int b : tables.modesOf[second]) {
        if (agree(first, a, second, b, stage)) {
          return true;
        }
      }
    }
    return false;
  }
}
