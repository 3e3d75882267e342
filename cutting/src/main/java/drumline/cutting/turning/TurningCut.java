package drumline.cutting.turning;

import drumline.cutting.drive.SpindleSpeed;
import drumline.cutting.force.ChipSection;
import drumline.cutting.force.CuttingLoad;
import drumline.cutting.force.CuttingPower;
import drumline.cutting.force.ForceSplit;
import drumline.cutting.force.KienzleConstants;
import drumline.cutting.force.KienzleCorrections;
import drumline.cutting.force.KienzleForce;
import drumline.cutting.validity.Require;

/**
 * Load of a turning, boring or facing pass.
 *
 * <p>Fc by {@link KienzleForce}; M = Fc·d/2000; P = Fc·vc/60000. Along the bar the feed force is
 * axial and the passive force radial; facing exchanges the two.
 *
 * <p>Source: [TSCH] Dietrich and Tschätsch, 11th edition; worked example [ESKC]. The torque is
 * taken on the larger diameter, so it is a little high.
 *
 * @param diameterMm diameter d on which the cutting speed is counted, above 0
 * @param chip depth, feed and edge angle
 * @param split shares of feed and passive force
 * @param along direction of the feed
 */
public record TurningCut(double diameterMm, ChipSection chip, ForceSplit split, Along along) {
  /** Direction of the feed. */
  public enum Along {
    /** Towards the collet: the feed force pushes the bar back. */
    AXIS,
    /** Towards the axis. */
    RADIUS
  }

  /**
   * @throws IllegalArgumentException if the diameter is not above 0
   */
  public TurningCut {
    Require.positive("diameterMm", diameterMm);
  }

  /**
   * Forces, torque and power.
   *
   * @param constants kc1.1 and mc of the material
   * @param corrections factors; inside turning takes {@code INSIDE_TURNING}
   * @param speedRevPerMin spindle speed n, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public CuttingLoad load(
      KienzleConstants constants, KienzleCorrections corrections, double speedRevPerMin) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    double forceN = KienzleForce.forceN(constants, corrections, chip);
    double feedForceN = split.feedForceRatio() * forceN;
    double passiveForceN = split.passiveForceRatio() * forceN;
    boolean axial = along == Along.AXIS;
    return new CuttingLoad(
        KienzleForce.specificForceMpa(constants, corrections, chip.thicknessMm()),
        chip.thicknessMm(),
        forceN,
        axial ? feedForceN : passiveForceN,
        axial ? passiveForceN : feedForceN,
        CuttingPower.torqueNm(forceN, diameterMm),
        CuttingPower.powerKw(forceN, SpindleSpeed.mPerMin(speedRevPerMin, diameterMm)),
        KienzleConstants.validity(chip.thicknessMm()));
  }

  /**
   * Removal rate Q = ap·f·vc (cm³/min).
   *
   * @param speedRevPerMin spindle speed n, above 0
   */
  public double removalCm3PerMin(double speedRevPerMin) {
    return chip.areaMm2() * SpindleSpeed.mPerMin(speedRevPerMin, diameterMm);
  }
}
