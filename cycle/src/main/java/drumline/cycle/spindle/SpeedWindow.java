package drumline.cycle.spindle;

import drumline.shop.machine.Workholding;
import drumline.shop.operation.Operation;
import java.util.Optional;

/**
 * Speeds at which an operation can turn on a spindle, alone.
 *
 * @param lowestRevPerMin slowest
 * @param highestRevPerMin fastest, at least the slowest
 * @param limit what sets the fastest, in words
 */
public record SpeedWindow(double lowestRevPerMin, double highestRevPerMin, String limit) {

  /**
   * The operation's own window, cut to the spindle's speeds and to where its power and its collet's
   * grip suffice; empty if nothing is left.
   *
   * <p>Power: n ≤ 9549·P/M. Grip: m·r·ω² ≤ F0 − S·R/μ and ≤ 0.67·F0; symbols as in {@link
   * SpindleShares}. Both shares grow with speed, so one fastest speed is enough.
   *
   * <p>Source: [BASIS] sections 1 and 6, solved for the speed.
   */
  public static Optional<SpeedWindow> find(Operation operation, WorkSpindle spindle) {
    double lowest = Math.max(operation.cut().lowestRevPerMin(), spindle.lowestRevPerMin());
    if (operation.loads().torqueNm() > spindle.torqueNm()) {
      return Optional.empty();
    }
    SpeedWindow window =
        new SpeedWindow(lowest, operation.cut().highestRevPerMin(), operation.cut().speedLimit())
            .cutTo(spindle.highestRevPerMin(), "spindle's fastest speed")
            .cutTo(powerLimit(operation, spindle), "spindle's power")
            .cutTo(gripLimit(operation, spindle), "collet's grip, less what speed takes from it");
    return window.highestRevPerMin >= lowest && window.highestRevPerMin > 0
        ? Optional.of(window)
        : Optional.empty();
  }

  private SpeedWindow cutTo(double revPerMin, String words) {
    return revPerMin < highestRevPerMin ? new SpeedWindow(lowestRevPerMin, revPerMin, words) : this;
  }

  private static double powerLimit(Operation operation, WorkSpindle spindle) {
    return 30_000 / Math.PI * spindle.powerKw() / operation.loads().torqueNm();
  }

  private static double gripLimit(Operation operation, WorkSpindle spindle) {
    Workholding grip = spindle.grip();
    double pullN = SpindleShares.pullN(operation.loads(), spindle);
    double neededN = grip.safetyRatio() * pullN / grip.frictionRatio();
    double sparedN =
        Math.min(grip.gripN() - neededN, SpindleShares.GREATEST_LOSS_RATIO * grip.gripN());
    if (sparedN < 0) {
      return 0;
    }
    double omega = Math.sqrt(sparedN / (grip.jawMassKg() * grip.jawRadiusMm() / 1000));
    return omega * 30 / Math.PI;
  }
}
