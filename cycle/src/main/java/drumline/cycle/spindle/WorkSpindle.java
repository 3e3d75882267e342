package drumline.cycle.spindle;

import drumline.shop.machine.Machine;
import drumline.shop.machine.PickUp;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.machine.Workholding;

/**
 * A work spindle with its collet: what it can turn, how fast it changes, how fast it grips.
 *
 * @param lowestRevPerMin slowest working speed, 0 or more
 * @param highestRevPerMin fastest speed, above 0
 * @param powerKw continuous power, above 0
 * @param torqueNm continuous torque up to the speed where power limits, above 0
 * @param runUpRevPerMinPerS change of speed in a second, above 0
 * @param orientS time to bring a stopping spindle to an angle and hold it, 0 or more
 * @param grip collet
 * @param gripDiameterMm diameter that the collet grips on, above 0
 * @param hold what takes thrust towards the collet
 */
public record WorkSpindle(
    double lowestRevPerMin,
    double highestRevPerMin,
    double powerKw,
    double torqueNm,
    double runUpRevPerMinPerS,
    double orientS,
    Workholding grip,
    double gripDiameterMm,
    AxialHold hold) {

  /** What takes a thrust that pushes the work into the collet. */
  public enum AxialHold {
    /** The collet's friction: a bar could slide back. */
    FRICTION,
    /** A stop inside the spindle that the piece rests on: common practice for pick-up spindles. */
    STOP
  }

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if a number is outside its range
   */
  public WorkSpindle {
    RangeCheck.notNegative("lowestRevPerMin", lowestRevPerMin);
    RangeCheck.positive("highestRevPerMin", highestRevPerMin);
    RangeCheck.positive("powerKw", powerKw);
    RangeCheck.positive("torqueNm", torqueNm);
    RangeCheck.positive("runUpRevPerMinPerS", runUpRevPerMinPerS);
    RangeCheck.notNegative("orientS", orientS);
    RangeCheck.positive("gripDiameterMm", gripDiameterMm);
  }

  /** A spindle of the drum, or the main spindle of a machine without one. */
  public static WorkSpindle ofDrum(Machine machine, GripDiameters diameters) {
    SpindleDrive drive = machine.drive();
    return new WorkSpindle(
        drive.lowestRevPerMin(),
        drive.highestRevPerMin(),
        drive.powerKw(),
        drive.torqueNm(),
        drive.runUpRevPerMinPerS(),
        drive.orientS(),
        machine.workholding(),
        diameters.drumMm(),
        AxialHold.FRICTION);
  }

  /**
   * A pick-up spindle. Its collet's friction, jaws and safety are taken as the drum's, since a data
   * sheet gives only its grip.
   *
   * @throws IllegalArgumentException if the machine has no pick-up spindle
   */
  public static WorkSpindle ofPickUp(Machine machine, GripDiameters diameters) {
    PickUp pickUp = machine.pickUp();
    if (pickUp == null) {
      throw new IllegalArgumentException(
          "machine is " + machine.name() + ", allowed: a machine with a pick-up spindle");
    }
    Workholding drum = machine.workholding();
    Workholding grip =
        new Workholding(
            pickUp.gripN(),
            drum.frictionRatio(),
            drum.jawMassKg(),
            drum.jawRadiusMm(),
            drum.safetyRatio());
    return new WorkSpindle(
        0,
        pickUp.highestRevPerMin(),
        pickUp.powerKw(),
        pickUp.torqueNm(),
        pickUp.runUpRevPerMinPerS(),
        pickUp.orientS(),
        grip,
        diameters.pickUpMm(),
        AxialHold.STOP);
  }

  /**
   * Time between the end of work in one state and the begin of work in another: |n2 − n1| / run-up,
   * and the orientation where a turning spindle comes to stand; 0 where either is free.
   */
  public double changeS(SpindleState from, SpindleState to) {
    if (from.isFree() || to.isFree()) {
      return 0;
    }
    double runS = Math.abs(from.revPerMin() - to.revPerMin()) / runUpRevPerMinPerS;
    return to.stands() && !from.stands() ? runS + orientS : runS;
  }

  /**
   * Time to reach a state from standstill or from the fastest speed, the longer of both, and the
   * orientation where the spindle comes to stand; 0 where it is free.
   */
  public double reachS(SpindleState to) {
    if (to.isFree()) {
      return 0;
    }
    double n = to.revPerMin();
    double runS = Math.max(n, highestRevPerMin - n) / runUpRevPerMinPerS;
    return to.stands() ? runS + orientS : runS;
  }
}
