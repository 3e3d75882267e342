package drumline.intake.machine;

import drumline.intake.form.Block;
import drumline.intake.form.Form;
import drumline.intake.form.Range;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.machine.Workholding;
import drumline.shop.quantity.QuantityKind;

/** Reads what drives the work spindles and what grips the bar. */
public final class DriveForm {

  /** Keys of the drive. */
  public static final Form DRIVE =
      Form.of(
          "drive",
          "coupling",
          "lowest-speed",
          "highest-speed",
          "power",
          "torque",
          "run-up",
          "orient",
          "c-axis-speed");

  /** Keys of the workholding. */
  public static final Form WORKHOLDING =
      Form.of("workholding", "grip", "friction", "jaw-mass", "jaw-radius", "safety");

  private DriveForm() {}

  static SpindleDrive drive(Block block) {
    double lowest = block.quantity("lowest-speed", QuantityKind.ROTATION, Range.POSITIVE);
    double highest = block.quantity("highest-speed", QuantityKind.ROTATION, Range.POSITIVE);
    if (lowest > highest) {
      block.report(
          "span-backwards", "a lowest speed above the highest", "the lesser one first", "");
    }
    return new SpindleDrive(
        block.choice("coupling", SpindleDrive.Coupling.class),
        lowest,
        highest,
        block.quantity("power", QuantityKind.POWER, Range.POSITIVE),
        block.quantity("torque", QuantityKind.TORQUE, Range.POSITIVE),
        RunUp.revPerMinPerS(block, "run-up", highest),
        block.quantity("orient", QuantityKind.TIME, Range.NOT_NEGATIVE, 0.0),
        block.quantity("c-axis-speed", QuantityKind.ROTATION, Range.NOT_NEGATIVE, 0.0));
  }

  static Workholding workholding(Block block) {
    return new Workholding(
        block.quantity("grip", QuantityKind.FORCE, Range.POSITIVE),
        block.number("friction", Range.above0To(1)),
        block.quantity("jaw-mass", QuantityKind.MASS, Range.NOT_NEGATIVE),
        block.quantity("jaw-radius", QuantityKind.LENGTH, Range.NOT_NEGATIVE),
        block.number("safety", Range.between(1, 10)));
  }
}
