package drumline.economics.output;

import drumline.economics.Range;

/**
 * Overall equipment effectiveness: availability × performance × quality.
 *
 * <ul>
 *   <li>availability = (loading time − time lost) / loading time, hours
 *   <li>performance = share of the ideal speed while running, %
 *   <li>quality = share of good pieces, %
 * </ul>
 *
 * Source: [ISO-22400-2] (from memory); worked example [SLACK].
 */
public final class Effectiveness {
  private Effectiveness() {}

  /**
   * Effectiveness in percent.
   *
   * @throws IllegalArgumentException if loading time is not above 0, more is lost than was loaded,
   *     or a share is outside 0…100
   */
  public static double pct(
      double loadingH, double lostH, double performancePct, double qualityPct) {
    Range.positive("loadingH", loadingH);
    Range.notNegative("lostH", lostH);
    double availability = Range.usablePct("available share", 100 * (loadingH - lostH) / loadingH);
    return availability
        * Range.usablePct("performancePct", performancePct)
        * Range.usablePct("qualityPct", qualityPct)
        / 1e4;
  }
}
