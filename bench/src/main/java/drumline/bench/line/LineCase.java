package drumline.bench.line;

import drumline.bench.measure.BenchCase;
import drumline.bench.measure.Measured;
import drumline.bench.measure.Sample;
import drumline.bench.measure.Spread;
import drumline.planner.balance.BalanceResult;
import drumline.planner.balance.Balancer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Published line balancing instances with known optima, in three sizes. */
public final class LineCase implements BenchCase {
  private static final int SMALL_TASKS = 35;
  private static final int FEWEST_MIDDLE_TASKS = 45;
  private static final int MIDDLE_TASKS = 111;
  private static final int MOST_TASKS = 300;
  private static final double LONGEST_GAP_PCT = 1;

  @Override
  public String name() {
    return "lines";
  }

  /** One instance as it was solved. */
  private record Solved(LineInstance instance, BalanceResult result, double tookS) {
    boolean isOptimal() {
      return result.cycleMs() == instance.optimumMs();
    }

    double gapPct() {
      return 100.0 * (result.cycleMs() - instance.optimumMs()) / instance.optimumMs();
    }
  }

  @Override
  public List<Measured> run(Sample sample) {
    List<Measured> lines = new ArrayList<>();
    lines.add(small(solve(1, SMALL_TASKS, sample)));
    lines.add(middle(solve(FEWEST_MIDDLE_TASKS, MIDDLE_TASKS, sample)));
    lines.add(large(solve(1, MOST_TASKS, sample)));
    return lines;
  }

  private static List<Solved> solve(int fewestCount, int mostCount, Sample sample) {
    List<LineInstance> all = LineInstance.all(fewestCount, mostCount);
    int step = Math.max(1, all.size() / sample.mostCount());
    List<Solved> solved = new ArrayList<>();
    for (int i = 0; i < all.size(); i += step) {
      long start = System.nanoTime();
      BalanceResult result = Balancer.balance(all.get(i).problem(), sample.searchS(), () -> false);
      Solved one = new Solved(all.get(i), result, (System.nanoTime() - start) / 1e9);
      solved.add(one);
      if (!one.isOptimal() || !result.isProvenOptimal()) {
        System.err.printf(
            Locale.ROOT,
            "%s: %d for %d, bound %d, %.1f s%n",
            one.instance().name(),
            result.cycleMs(),
            one.instance().optimumMs(),
            result.lowerBoundMs(),
            one.tookS());
      }
    }
    return solved;
  }

  private static Spread times(List<Solved> solved) {
    return new Spread(solved.stream().map(Solved::tookS).toList());
  }

  private static Measured small(List<Solved> solved) {
    Spread times = times(solved);
    long proven =
        solved.stream().filter(s -> s.isOptimal() && s.result().isProvenOptimal()).count();
    return new Measured(
        "lines up to 35 tasks",
        String.format(
            Locale.ROOT, "%.3f s median, %.2f s longest", times.median(), times.greatest()),
        proven + " of " + solved.size() + " proven",
        "all proven, median < 0.3 s, none > 5 s",
        proven == solved.size() && times.median() < 0.3 && times.greatest() <= 5);
  }

  private static Measured middle(List<Solved> solved) {
    Spread times = times(solved);
    double optimal = share(solved.stream().filter(Solved::isOptimal).count(), solved);
    double proven =
        share(solved.stream().filter(s -> s.result().isProvenOptimal()).count(), solved);
    return new Measured(
        "lines of 45 to 111 tasks",
        String.format(Locale.ROOT, "%.2f s median", times.median()),
        String.format(
            Locale.ROOT,
            "%.0f %% optimum, %.0f %% proven of %d",
            100 * optimal,
            100 * proven,
            solved.size()),
        "90 % optimum and 70 % proven in 10 s",
        optimal >= 0.9 && proven >= 0.7);
  }

  private static double share(long count, List<Solved> solved) {
    return count / (double) solved.size();
  }

  private static Measured large(List<Solved> solved) {
    Spread gaps = new Spread(solved.stream().map(Solved::gapPct).toList());
    return new Measured(
        "lines of all sizes",
        String.format(Locale.ROOT, "%.2f s median", times(solved).median()),
        String.format(
            Locale.ROOT,
            "gap %.2f %% median, %.2f %% greatest of %d",
            gaps.median(),
            gaps.greatest(),
            solved.size()),
        "gap <= 1 % in 30 s",
        gaps.greatest() <= LONGEST_GAP_PCT);
  }
}
