package drumline.app.formula.cut;

import static drumline.app.formula.Allowed.ABOVE_0;
import static drumline.app.formula.Measure.ROTATION;
import static drumline.app.formula.Measure.SPEED;

import drumline.app.formula.FormulaDraft;
import drumline.app.formula.Values;
import drumline.cutting.drive.SpindleSpeed;

/** Speed given in one of two ways: of the spindle, or of the surface on a diameter. */
final class SpeedInputs {
  private SpeedInputs() {}

  /** Spindle speed, or cutting speed on the diameter of the formula. */
  static FormulaDraft either(FormulaDraft draft) {
    return draft
        .optional("spindleSpeed", ROTATION, "spindle speed n; or give speed", ABOVE_0)
        .optional("speed", SPEED, "cutting speed vc; or give spindleSpeed", ABOVE_0);
  }

  /**
   * The spindle speed.
   *
   * @param diameterMm diameter on which a cutting speed counts, above 0
   * @throws IllegalArgumentException if both speeds or neither is given
   */
  static double revPerMin(Values v, double diameterMm) {
    if (v.has("spindleSpeed") == v.has("speed")) {
      throw new IllegalArgumentException(
          "speed is "
              + (v.has("speed") ? "given twice" : "missing")
              + "; allowed is one of spindleSpeed=…rev/min and speed=…m/min.");
    }
    return v.has("spindleSpeed")
        ? v.num("spindleSpeed")
        : SpindleSpeed.revPerMin(v.num("speed"), diameterMm);
  }
}
