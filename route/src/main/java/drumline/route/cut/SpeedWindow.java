package drumline.route.cut;

import drumline.shop.material.CuttingWindow;
import java.util.Locale;

/**
 * Spindle speeds that a cutting window allows on a diameter.
 *
 * @param lowestRevPerMin slowest
 * @param highestRevPerMin fastest
 * @param limit what sets the fastest, in words
 */
record SpeedWindow(double lowestRevPerMin, double highestRevPerMin, String limit) {

  /** n = 1000·v / (π·d), with v in m/min and d in mm. */
  static SpeedWindow of(CuttingWindow window, double diameterMm) {
    double highest = revPerMin(window.speedHighMPerMin(), diameterMm);
    double lowest = revPerMin(window.speedLowMPerMin(), diameterMm);
    String limit =
        String.format(Locale.ROOT, "%.0f m/min on Ø%.2f", window.speedHighMPerMin(), diameterMm);
    return new SpeedWindow(lowest, highest, limit);
  }

  /** The same window, no faster than a limit. */
  SpeedWindow atMost(double revPerMin, String reason) {
    return revPerMin >= highestRevPerMin
        ? this
        : new SpeedWindow(Math.min(lowestRevPerMin, revPerMin), revPerMin, reason);
  }

  static double revPerMin(double speedMPerMin, double diameterMm) {
    return 1000 * speedMPerMin / (Math.PI * diameterMm);
  }
}
