package drumline.cycle.spindle;

import drumline.cycle.spindle.WorkSpindle.AxialHold;
import drumline.shop.machine.Workholding;
import drumline.shop.operation.Loads;

/**
 * How much of a work spindle's torque and of its collet's grip an operation takes. Shares of cuts
 * that run together add up; they must stay at 1 or below.
 *
 * <p>Torque: M / min(Mc, 9549·P/n), with M the operation's torque in Nm, Mc the spindle's
 * continuous torque in Nm, P its power in kW and n the speed in rev/min.
 *
 * <p>Grip: S·√((2·M/d)² + F²) / (μ·Fsp), Fsp = F0 − m·r·ω², with F the thrust in N, d the gripped
 * diameter in m, S the safety factor, μ the friction, F0 the grip at standstill in N, m and r mass
 * in kg and radius in m of the gripping parts, ω = 2π·n/60. Forces of several cuts add up at most
 * to the sum of their amounts (triangle inequality), so adding shares is on the safe side.
 *
 * <p>Source: [BASIS] section 6, slip check and VDI 3106 logic; loss limit [OPTIMUM] on EN 1550.
 * Known limits: radial forces and bending at the collet are not counted; check the collet maker's
 * speed and force diagram.
 */
public final class SpindleShares {
  /** Greatest part of the grip that may be lost to speed (EN 1550). */
  public static final double GREATEST_LOSS_RATIO = 0.67;

  /** Room for rounding where a share or a loss is compared with its limit. */
  public static final double ROUNDING_RATIO = 1e-9;

  private static final double NM_PER_KW_AT_1_REV_PER_MIN = 30_000 / Math.PI;

  private SpindleShares() {}

  /**
   * Torque in Nm that the spindle gives for long at a speed.
   *
   * @param revPerMin speed, 0 or more
   * @throws IllegalArgumentException if the speed is negative or NaN
   */
  public static double torqueAtNm(WorkSpindle spindle, double revPerMin) {
    RangeCheck.notNegative("revPerMin", revPerMin);
    return Math.min(spindle.torqueNm(), NM_PER_KW_AT_1_REV_PER_MIN * spindle.powerKw() / revPerMin);
  }

  /**
   * Share of the spindle's torque.
   *
   * @param revPerMin speed, 0 or more
   * @throws IllegalArgumentException if the speed is negative or NaN
   */
  public static double torqueShareRatio(Loads loads, WorkSpindle spindle, double revPerMin) {
    return loads.torqueNm() / torqueAtNm(spindle, revPerMin);
  }

  /**
   * Grip in N that is left at a speed; 0 where more than {@link #GREATEST_LOSS_RATIO} of it is
   * lost.
   *
   * @param revPerMin speed, 0 or more
   * @throws IllegalArgumentException if the speed is negative or NaN
   */
  public static double gripAtN(WorkSpindle spindle, double revPerMin) {
    RangeCheck.notNegative("revPerMin", revPerMin);
    Workholding grip = spindle.grip();
    double omega = 2 * Math.PI * revPerMin / 60;
    double lossN = grip.jawMassKg() * grip.jawRadiusMm() / 1000 * omega * omega;
    double mostN = GREATEST_LOSS_RATIO * grip.gripN() * (1 + ROUNDING_RATIO);
    return lossN > mostN ? 0 : grip.gripN() - lossN;
  }

  /**
   * Pull at the gripped surface in N: √((2·M/d)² + F²), with F = 0 where a stop takes the thrust.
   */
  public static double pullN(Loads loads, WorkSpindle spindle) {
    double thrustN = spindle.hold() == AxialHold.STOP ? 0 : loads.thrustN();
    return Math.hypot(2 * loads.torqueNm() * 1000 / spindle.gripDiameterMm(), thrustN);
  }

  /**
   * Share of the grip; infinite where there is a load and no grip left.
   *
   * @param revPerMin speed, 0 or more
   * @throws IllegalArgumentException if the speed is negative or NaN
   */
  public static double gripShareRatio(Loads loads, WorkSpindle spindle, double revPerMin) {
    double holdN = spindle.grip().frictionRatio() * gripAtN(spindle, revPerMin);
    double needN = spindle.grip().safetyRatio() * pullN(loads, spindle);
    return needN == 0 ? 0 : needN / holdN;
  }
}
