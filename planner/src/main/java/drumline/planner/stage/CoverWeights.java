package drumline.planner.stage;

import java.util.Arrays;

/**
 * A weight for each task such that no position can do tasks of more than weight 1, and all tasks
 * together weigh as much as possible: a set of tasks needs at least its weight in positions.
 */
final class CoverWeights {
  private final double[] weight;
  private final long counted;

  /** Weights of the tasks of a set of bits; others weigh nothing. */
  CoverWeights(int taskCount, long counted, long[] sets) {
    this.counted = counted;
    double[] cost = new double[sets.length];
    Arrays.fill(cost, 1);
    double[] price = new CoverProgram(taskCount, sets, cost, taskCount, 2).prices();
    double most = 1;
    for (long set : sets) {
      most = Math.max(most, CoverProgram.weigh(price, set));
    }
    double scale = most * (1 + 1e-9);
    weight = Arrays.stream(price).map(w -> w / scale).toArray();
  }

  /** Positions that a set of tasks needs at least. */
  double of(long set) {
    return CoverProgram.weigh(weight, set & counted);
  }
}
