package drumline.bench.measure;

import java.util.Arrays;
import java.util.List;

/** Median, share and greatest of measured figures. */
public final class Spread {
  private final double[] sorted;

  /**
   * The figures.
   *
   * @throws IllegalArgumentException if there are none
   */
  public Spread(List<Double> figures) {
    if (figures.isEmpty()) {
      throw new IllegalArgumentException("figures is empty, allowed: one or more");
    }
    sorted = figures.stream().mapToDouble(Double::doubleValue).sorted().toArray();
  }

  /** The middle one, or the mean of the middle two. */
  public double median() {
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }

  /** The greatest. */
  public double greatest() {
    return sorted[sorted.length - 1];
  }

  /** Share of the figures up to a limit, 0 to 1. */
  public double shareUpTo(double mostRatio) {
    return Arrays.stream(sorted).filter(v -> v <= mostRatio).count() / (double) sorted.length;
  }
}
