package drumline.shop.operation;

/**
 * Forces of one operation at its cutting values, the greatest that occur at one moment.
 *
 * @param cuttingForceN main cutting force
 * @param thrustN force along the axis, towards the collet
 * @param radialN force across the axis
 * @param torqueNm torque at the work spindle
 * @param toolPowerKw power of the driven tool, 0 for tools that stand
 * @param feedForceN force that the slide must push with
 */
public record Loads(
    double cuttingForceN,
    double thrustN,
    double radialN,
    double torqueNm,
    double toolPowerKw,
    double feedForceN) {

  /** No load worth counting. */
  public static final Loads NONE = new Loads(0, 0, 0, 0, 0, 0);

  /** Power at the work spindle in kW at a speed in rev/min: P = M·n/9549. */
  public double spindlePowerKw(double revPerMin) {
    return torqueNm * revPerMin / 9549.297;
  }
}
