package drumline.shop.operation;

import drumline.shop.material.CuttingWindow.TaylorConstants;

/**
 * How an operation cuts, and how its time follows from the spindle's speed: cutting time in seconds
 * = 60·revolutions / n + fixed time.
 *
 * @param revolutionsCount turns of the spindle while the tool feeds; 0 where the spindle is held
 * @param fixedS time that does not depend on the spindle: return strokes, driven tools' cutting
 * @param dwellRevCount turns that the tool stands at depth
 * @param lowestRevPerMin slowest spindle speed at which the operation still cuts well
 * @param highestRevPerMin fastest spindle speed allowed
 * @param speedLimit what sets the fastest speed, in words
 * @param toolRevPerMin speed of a driven tool, 0 for tools that stand
 * @param cuttingDiameterMm diameter that the cutting speed is counted on: the work's for turning,
 *     the tool's for driven tools
 * @param feedMmPerRev feed per revolution of work or tool; depth per stroke for slotting
 * @param depthMm depth of cut across the surface; half the diameter for drilling
 * @param passCount passes
 * @param travelMm way of the tool while it cuts, all passes
 * @param approachMm way from the waiting place to the cut, by rapid
 * @param life tool life constants, v in m/min at {@code cuttingDiameterMm}
 */
public record CutSpec(
    double revolutionsCount,
    double fixedS,
    double dwellRevCount,
    double lowestRevPerMin,
    double highestRevPerMin,
    String speedLimit,
    double toolRevPerMin,
    double cuttingDiameterMm,
    double feedMmPerRev,
    double depthMm,
    int passCount,
    double travelMm,
    double approachMm,
    TaylorConstants life) {

  /** Cutting time in seconds at a spindle speed in rev/min; the speed is not used when held. */
  public double cutS(double revPerMin) {
    double revolutions = revolutionsCount + dwellRevCount;
    return revolutions == 0 ? fixedS : 60 * revolutions / revPerMin + fixedS;
  }

  /** The same cut with another slowest spindle speed. */
  public CutSpec withLowest(double newLowestRevPerMin) {
    return new CutSpec(
        revolutionsCount,
        fixedS,
        dwellRevCount,
        newLowestRevPerMin,
        highestRevPerMin,
        speedLimit,
        toolRevPerMin,
        cuttingDiameterMm,
        feedMmPerRev,
        depthMm,
        passCount,
        travelMm,
        approachMm,
        life);
  }

  /** The same cut with another time that does not depend on the spindle. */
  public CutSpec withFixed(double newFixedS) {
    return new CutSpec(
        revolutionsCount,
        newFixedS,
        dwellRevCount,
        lowestRevPerMin,
        highestRevPerMin,
        speedLimit,
        toolRevPerMin,
        cuttingDiameterMm,
        feedMmPerRev,
        depthMm,
        passCount,
        travelMm,
        approachMm,
        life);
  }

  /** The same cut with another fastest spindle speed, and what sets it. */
  public CutSpec withHighest(double newHighestRevPerMin, String newSpeedLimit) {
    return new CutSpec(
        revolutionsCount,
        fixedS,
        dwellRevCount,
        lowestRevPerMin,
        newHighestRevPerMin,
        newSpeedLimit,
        toolRevPerMin,
        cuttingDiameterMm,
        feedMmPerRev,
        depthMm,
        passCount,
        travelMm,
        approachMm,
        life);
  }

  /**
   * The same cut with the driven tool at another speed; what is cut while the spindle stands takes
   * longer or shorter with it, return strokes included.
   */
  public CutSpec withToolSpeed(double newToolRevPerMin) {
    double newFixedS = revolutionsCount == 0 ? fixedS * toolRevPerMin / newToolRevPerMin : fixedS;
    return new CutSpec(
        revolutionsCount,
        newFixedS,
        dwellRevCount,
        lowestRevPerMin,
        highestRevPerMin,
        speedLimit,
        newToolRevPerMin,
        cuttingDiameterMm,
        feedMmPerRev,
        depthMm,
        passCount,
        travelMm,
        approachMm,
        life);
  }

  /** The same way with another feed, so with other revolutions. */
  public CutSpec withFeed(double newFeedMmPerRev) {
    return new CutSpec(
        revolutionsCount * feedMmPerRev / newFeedMmPerRev,
        fixedS,
        dwellRevCount,
        lowestRevPerMin,
        highestRevPerMin,
        speedLimit,
        toolRevPerMin,
        cuttingDiameterMm,
        newFeedMmPerRev,
        depthMm,
        passCount,
        travelMm,
        approachMm,
        life);
  }

  /** Cutting speed in m/min at a spindle speed in rev/min, or the driven tool's own. */
  public double cuttingSpeedMPerMin(double revPerMin) {
    double n = toolRevPerMin > 0 ? toolRevPerMin : revPerMin;
    return Math.PI * cuttingDiameterMm * n / 1000;
  }
}
