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
    String source) {

  /**
   * Taylor's constants v·T^n = C, at the upper feed of the window.
   *
   * @param exponentRatio n, between 0 and 1
   * @param constantMPerMin C: cutting speed in m/min for a life of one minute
   */
  public record TaylorConstants(double exponentRatio, double constantMPerMin) {}
}
