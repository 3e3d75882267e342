package drumline.intake.machine;

import drumline.intake.form.Block;
import drumline.intake.form.Form;
import drumline.intake.form.Range;
import drumline.shop.machine.PickUp;
import drumline.shop.quantity.QuantityKind;
import java.util.List;

/** Reads the pick-up spindles. */
public final class PickUpForm {

  /** Keys of the pick-up. */
  public static final Form FORM =
      Form.of(
          "pick-up",
          "spindles",
          "highest-speed",
          "power",
          "torque",
          "grip",
          "grip-time",
          "retract",
          "eject",
          "return",
          "run-up",
          "orient",
          "slides");

  private PickUpForm() {}

  static PickUp read(Block block, SlideForm slides) {
    double highest = block.quantity("highest-speed", QuantityKind.ROTATION, Range.POSITIVE);
    return new PickUp(
        (int) Math.round(block.number("spindles", Range.between(1, 2))),
        highest,
        block.quantity("power", QuantityKind.POWER, Range.POSITIVE),
        block.quantity("torque", QuantityKind.TORQUE, Range.POSITIVE),
        block.quantity("grip", QuantityKind.FORCE, Range.POSITIVE),
        block.quantity("grip-time", QuantityKind.TIME, Range.NOT_NEGATIVE),
        block.quantity("retract", QuantityKind.TIME, Range.NOT_NEGATIVE),
        block.quantity("eject", QuantityKind.TIME, Range.NOT_NEGATIVE),
        block.quantity("return", QuantityKind.TIME, Range.NOT_NEGATIVE),
        RunUp.revPerMinPerS(block, "run-up", highest),
        block.quantity("orient", QuantityKind.TIME, Range.NOT_NEGATIVE, 0.0),
        block.require("slides").map(slides::slides).orElse(List.of()));
  }
}
