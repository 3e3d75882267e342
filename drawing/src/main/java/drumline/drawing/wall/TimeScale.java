package drumline.drawing.wall;

import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.Timeline;

/**
 * The wall's time axis, running down from the end of the index.
 *
 * @param topY sheet y of time 0
 * @param pxPerS pixels for one second
 * @param longestS longest time that the wall shows
 */
record TimeScale(double topY, double pxPerS, double longestS) {

  private static final double[] STEPS_S = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100};
  private static final double LEAST_STEP_PX = 34;

  static TimeScale of(Timeline timeline, double topY, double timePx) {
    double longestS = timeline.cycleS();
    for (PositionTimeline position : timeline.positions()) {
      longestS = Math.max(longestS, position.busyS());
    }
    if (timeline.back() != null) {
      longestS = Math.max(longestS, timeline.back().busyS());
    }
    return new TimeScale(topY, longestS > 0 ? timePx / longestS : 1, longestS);
  }

  double y(double atS) {
    return topY + atS * pxPerS;
  }

  double bottomY() {
    return y(longestS);
  }

  /** Seconds between two lines of the grid. */
  double stepS() {
    for (double step : STEPS_S) {
      if (step * pxPerS >= LEAST_STEP_PX) {
        return step;
      }
    }
    return STEPS_S[STEPS_S.length - 1];
  }
}
