package drumline.shop.material;

/**
 * Cutting values with which one material is worked in one process with one tool material.
 *
 * @param process way of cutting
 * @param toolMaterial what the edge is made of
 * @param speedLowMPerMin slowest cutting speed that still cuts well
 * @param speedHighMPerMin fastest cutting speed allowed
 * @param feedLow least feed: mm/rev; for drilling mm/rev per mm of diameter; for milling mm per
 *     tooth; for slotting mm per stroke; for taps, thread tools and thread rolls the least pitch
 * @param feedHigh greatest feed, in the same unit
 * @param depthHighMm greatest depth of one cut across the surface, in mm; for reaming and
 *     burnishing the stock they take
 * @param life tool life at these values
 * @param confidence how well the figures are known
 * @param source where the figures come from, or "from memory"
 */
public record CuttingWindow(
    CuttingProcess process,
    ToolMaterial toolMaterial,
    double speedLowMPerMin,
    double speedHighMPerMin,
    double feedLow,
    double feedHigh,
    double depthHighMm,
    TaylorConstants life,
    Confidence confidence,
    String source) {

  /**
   * The same way of cutting at other values: speeds with the one-minute speed, so that tool life at
   * the window's ends stays, and feeds unless they are pitches.
   *
   * @param speedRatio what speeds are multiplied with, above 0
   * @param feedRatio what feeds are multiplied with, above 0
   * @throws IllegalArgumentException if a ratio is not above 0
   */
  public CuttingWindow scaled(double speedRatio, double feedRatio) {
    if (!(speedRatio > 0 && feedRatio > 0)) {
      throw new IllegalArgumentException(
          "speedRatio, feedRatio: " + speedRatio + ", " + feedRatio + ", allowed: above 0");
    }
    double feeds = process.feedIsPitch() ? 1 : feedRatio;
    return new CuttingWindow(
        process,
        toolMaterial,
        speedLowMPerMin * speedRatio,
        speedHighMPerMin * speedRatio,
        feedLow * feeds,
        feedHigh * feeds,
        depthHighMm,
        new TaylorConstants(life.exponentRatio(), life.constantMPerMin() * speedRatio),
        confidence,
        source);
  }

  /**
   * Taylor's constants v·T^n = C, at the upper feed of the window.
   *
   * @param exponentRatio n, between 0 and 1
   * @param constantMPerMin C: cutting speed in m/min for a life of one minute
   */
  public record TaylorConstants(double exponentRatio, double constantMPerMin) {}
}
