package drumline.planner.translate;

import drumline.cycle.spindle.SpeedWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The whole speeds that turning operations at one kind of spindle choose from: each one's own
 * fastest, since the best common speed of operations that cut together is the least of their
 * fastest ones.
 *
 * @param speedsRevPerMin speeds, rising
 * @param isMerged whether near-equal speeds were merged to keep their number down
 */
record SpeedGrid(List<Integer> speedsRevPerMin, boolean isMerged) {
  private static final int MOST_SPEEDS = 24;
  private static final int MOST_SLOWER = 6;

  /** Least ratio of a slower speed to its neighbours; nearer ones bring next to nothing. */
  private static final double LEAST_RATIO = 1.05;

  SpeedGrid {
    speedsRevPerMin = List.copyOf(speedsRevPerMin);
  }

  /**
   * The grid of these windows, with speeds that must stay in it.
   *
   * @param wantedRevPerMin speeds that must stay; those outside every window are left out
   * @param slowerRevPerMin speeds that may pay; taken as long as there is room
   */
  static SpeedGrid of(
      List<SpeedWindow> windows, List<Integer> wantedRevPerMin, List<Integer> slowerRevPerMin) {
    TreeSet<Integer> speeds = new TreeSet<>();
    windows.forEach(window -> speeds.add(fastest(window)));
    wantedRevPerMin.stream()
        .filter(n -> windows.stream().anyMatch(window -> isInside(n, window)))
        .forEach(speeds::add);
    int most = Math.min(MOST_SPEEDS, speeds.size() + MOST_SLOWER);
    for (int n : slowerRevPerMin) {
      if (speeds.size() < most && isApart(speeds, n)) {
        speeds.add(n);
      }
    }
    List<Integer> list = new ArrayList<>(speeds);
    boolean isMerged = false;
    while (list.size() > MOST_SPEEDS) {
      int drop = closest(list, windows, wantedRevPerMin);
      if (drop < 0) {
        break;
      }
      list.remove(drop);
      isMerged = true;
    }
    return new SpeedGrid(list, isMerged);
  }

  /** The grid's speeds inside a window, rising. */
  List<Integer> inside(SpeedWindow window) {
    return speedsRevPerMin.stream().filter(n -> isInside(n, window)).toList();
  }

  /** Fastest speed of the grid, 0 if it is empty. */
  int fastestRevPerMin() {
    return speedsRevPerMin.isEmpty() ? 0 : speedsRevPerMin.get(speedsRevPerMin.size() - 1);
  }

  private static boolean isApart(TreeSet<Integer> speeds, int n) {
    Integer below = speeds.floor(n);
    Integer above = speeds.ceiling(n);
    return (below == null || n > below * LEAST_RATIO) && (above == null || above > n * LEAST_RATIO);
  }

  private static int fastest(SpeedWindow window) {
    return Math.max(1, Rounding.revPerMin(window.highestRevPerMin()));
  }

  /** A window narrower than one rev/min takes the whole speed below it. */
  private static boolean isInside(int n, SpeedWindow window) {
    return n <= fastest(window) && n >= Math.min(window.lowestRevPerMin(), fastest(window));
  }

  /**
   * Index of the speed that costs least to give up: the one nearest above another that leaves every
   * window a speed; -1 if there is none.
   */
  private static int closest(
      List<Integer> speeds, List<SpeedWindow> windows, List<Integer> wanted) {
    int best = -1;
    double bestRatio = Double.POSITIVE_INFINITY;
    for (int k = 1; k < speeds.size(); k++) {
      double ratio = (double) speeds.get(k) / speeds.get(k - 1);
      if (ratio < bestRatio && !wanted.contains(speeds.get(k)) && canDrop(speeds, k, windows)) {
        best = k;
        bestRatio = ratio;
      }
    }
    return best;
  }

  private static boolean canDrop(List<Integer> speeds, int index, List<SpeedWindow> windows) {
    int below = speeds.get(index - 1);
    return windows.stream()
        .filter(window -> isInside(speeds.get(index), window))
        .allMatch(window -> isInside(below, window));
  }
}
