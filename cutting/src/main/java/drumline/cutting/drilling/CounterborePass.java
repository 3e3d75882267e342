package drumline.cutting.drilling;

import drumline.cutting.validity.Require;

/**
 * Counterboring, countersinking or centring to a depth, with a dwell at the bottom.
 *
 * <p>t = 60·[(la + l)/(f·n) + u/n] (s). Load: {@link HoleCut} with κ = 90° (counterbore) or half
 * the point angle.
 *
 * <p>Source: [BASIS] 2.3, derived; a dwell of 1–2 revolutions is common practice.
 *
 * @param depthMm depth l, above 0
 * @param approachMm approach la at feed, 0 or more
 * @param feedMmPerRev feed f, above 0
 * @param dwellCount revolutions u at the bottom, 0 or more
 */
public record CounterborePass(
    double depthMm, double approachMm, double feedMmPerRev, double dwellCount) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public CounterborePass {
    Require.positive("depthMm", depthMm);
    Require.notNegative("approachMm", approachMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
    Require.notNegative("dwellCount", dwellCount);
  }

  /** Revolutions that the pass takes, whatever the speed. */
  public double revolutionsCount() {
    return (approachMm + depthMm) / feedMmPerRev + dwellCount;
  }

  /**
   * Time of the pass.
   *
   * @param speedRevPerMin speed n between work and tool, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double timeS(double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    return 60 * revolutionsCount() / speedRevPerMin;
  }
}
