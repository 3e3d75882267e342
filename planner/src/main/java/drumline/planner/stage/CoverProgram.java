package drumline.planner.stage;

/**
 * Covers tasks with sets at least cost by linear programming: Σ cost·λ least, each task in sets of
 * Σ λ ≥ 1, at most a number of sets in all. Solved by the revised simplex method with the sets
 * priced one by one; only the prices of the tasks are of interest.
 */
final class CoverProgram {
  private static final double TOLERANCE = 1e-9;
  private static final int MOST_STEPS = 4000;
  private final long[] sets;
  private final double[] setCost;
  private final int rows;
  private final double[][] inverse;
  private final double[] amount;
  private final double[] cost;

  /**
   * A program.
   *
   * @param rowCount tasks to be covered
   * @param sets sets of rows as bits
   * @param setCost cost of each set
   * @param mostSets sets allowed in all
   * @param penalty cost of leaving a task uncovered
   */
  CoverProgram(int rowCount, long[] sets, double[] setCost, double mostSets, double penalty) {
    this.sets = sets;
    this.setCost = setCost;
    rows = rowCount + 1;
    inverse = new double[rows][rows];
    amount = new double[rows];
    cost = new double[rows];
    for (int r = 0; r < rowCount; r++) {
      inverse[r][r] = 1;
      amount[r] = 1 + 1e-7 * (r + 1);
      cost[r] = penalty;
    }
    inverse[rowCount][rowCount] = -1;
    amount[rowCount] = mostSets;
  }

  /** Price of each task, 0 or more, at the best cover found. */
  double[] prices() {
    double[] price = price();
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] column = new double[rows];
      double newCost = enter(price, column);
      if (Double.isNaN(newCost) || !pivot(column, newCost)) {
        break;
      }
      price = price();
    }
    double[] result = new double[rows - 1];
    for (int r = 0; r < result.length; r++) {
      result[r] = Math.max(0, price[r]);
    }
    return result;
  }

  private double[] price() {
    double[] price = new double[rows];
    for (int r = 0; r < rows; r++) {
      for (int i = 0; i < rows && cost[r] != 0; i++) {
        price[i] += cost[r] * inverse[r][i];
      }
    }
    return price;
  }

  /** Fills the column with the most to gain and gives its cost; NaN if there is none. */
  private double enter(double[] price, double[] column) {
    int best = -1;
    double gain = TOLERANCE;
    for (int s = 0; s < sets.length; s++) {
      double now = weigh(price, sets[s]) - price[rows - 1] - setCost[s];
      if (now > gain) {
        gain = now;
        best = s;
      }
    }
    int low = -1;
    for (int r = 0; r < rows; r++) {
      if (-price[r] > gain) {
        gain = -price[r];
        low = r;
      }
    }
    if (low >= 0) {
      column[low] = -1;
      return 0;
    }
    if (best < 0) {
      return Double.NaN;
    }
    for (int r = 0; r < rows - 1; r++) {
      column[r] = sets[best] >>> r & 1;
    }
    column[rows - 1] = -1;
    return setCost[best];
  }

  private boolean pivot(double[] column, double newCost) {
    double[] change = new double[rows];
    int row = -1;
    double least = Double.MAX_VALUE;
    for (int r = 0; r < rows; r++) {
      for (int i = 0; i < rows; i++) {
        change[r] += inverse[r][i] * column[i];
      }
      if (change[r] > TOLERANCE && amount[r] / change[r] < least) {
        least = amount[r] / change[r];
        row = r;
      }
    }
    if (row < 0) {
      return false;
    }
    scale(row, 1 / change[row]);
    for (int r = 0; r < rows; r++) {
      if (r != row && change[r] != 0) {
        for (int i = 0; i < rows; i++) {
          inverse[r][i] -= change[r] * inverse[row][i];
        }
        amount[r] -= change[r] * amount[row];
      }
    }
    cost[row] = newCost;
    return true;
  }

  private void scale(int row, double factor) {
    for (int i = 0; i < rows; i++) {
      inverse[row][i] *= factor;
    }
    amount[row] *= factor;
  }

  /** Sum of prices over a set of bits. */
  static double weigh(double[] price, long set) {
    double sum = 0;
    for (long rest = set; rest != 0; rest &= rest - 1) {
      sum += price[Long.numberOfTrailingZeros(rest)];
    }
    return sum;
  }
}
