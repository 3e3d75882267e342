package drumline.planner.translate;

import drumline.cycle.spindle.SpeedWindow;
import drumline.cycle.spindle.WorkSpindle;
import drumline.shop.operation.Operation;

/**
 * A cut so short that running the spindle up for it can take longer than it saves.
 *
 * <p>Cut and one change of speed take 60·u/n + n/α + constant, least at n = √(60·u·α), with u turns
 * while the tool feeds and α the spindle's run-up in rev/min each second.
 *
 * <p>Source: derived from t = 60·u/n and constant acceleration.
 */
final class ShortCut {
  private ShortCut() {}

  /** The speed in rev/min at which cut and one change are shortest. */
  static double speedRevPerMin(double turnsCount, WorkSpindle spindle) {
    return Math.sqrt(60 * turnsCount * spindle.runUpRevPerMinPerS());
  }

  /** Whether that speed lies inside the operation's window, so that its fastest may not be best. */
  static boolean pays(Operation operation, SpeedWindow window, WorkSpindle spindle) {
    double n = speedRevPerMin(operation.cut().revolutionsCount(), spindle);
    return n >= window.lowestRevPerMin() && n < window.highestRevPerMin();
  }
}
