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

  SpeedGrid {
    speedsRevPerMin = List.copyOf(speedsRevPerMin);
  }

  /**
   * The grid of these windows, with speeds that must stay in it.
   *
   * @param wantedRevPerMin speeds that are pinned
   */
  static SpeedGrid of(List<SpeedWindow> windows, List<Integer> wantedRevPerMin) {
    TreeSet<Integer> speeds = new TreeSet<>(wantedRevPerMin);
    windows.forEach(window -> speeds.add(fastest(window)));
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
