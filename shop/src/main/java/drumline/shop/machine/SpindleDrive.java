package drumline.shop.machine;

/**
 * What drives the work spindles.
 *
 * @param coupling whether each spindle has a speed of its own
 * @param lowestRevPerMin slowest working speed
 * @param highestRevPerMin fastest speed
 * @param powerKw continuous power at one spindle
 * @param torqueNm continuous torque at one spindle up to the speed where power limits
 * @param runUpRevPerMinPerS change of speed in a second, up or down
 * @param orientS time to bring a stopping spindle to an angle and hold it
 * @param cAxisRevPerMin fastest turning as a controlled axis, 0 where there is none
 */
public record SpindleDrive(
    Coupling coupling,
    double lowestRevPerMin,
    double highestRevPerMin,
    double powerKw,
    double torqueNm,
    double runUpRevPerMinPerS,
    double orientS,
    double cAxisRevPerMin) {

  /** How the spindles' speeds hang together. */
  public enum Coupling {
    /** Each position has its own speed. */
    INDEPENDENT,
    /** One speed for all positions. */
    COMMON
  }

  /** Torque in Nm that may be used for long at a speed in rev/min: the lesser of both limits. */
  public double torqueAtNm(double revPerMin) {
    return Math.min(torqueNm, 9549.297 * powerKw / revPerMin);
  }
}
