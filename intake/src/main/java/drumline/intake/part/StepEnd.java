package drumline.intake.part;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Plain;
import drumline.intake.form.Range;
import drumline.shop.quantity.QuantityKind;
import java.util.Optional;

/** Reads where a step ends: an absolute measure from the face, or its own length. */
final class StepEnd {

  private StepEnd() {}

  /**
   * The end of a step.
   *
   * @param block the step
   * @param key key of the absolute measure
   * @param fromMm where the step begins; NaN where that is not known
   */
  static double read(Block block, String key, double fromMm) {
    Optional<Field> absolute = block.find(key);
    Optional<Field> length = block.find("length");
    if (absolute.isPresent() == length.isPresent()) {
      String found =
          absolute.isPresent() ? "both \"%s\" and \"length\"" : "neither \"%s\" nor \"length\"";
      block.report("step-end", String.format(found, key), "one of the two", "");
      return Double.NaN;
    }
    if (length.isPresent()) {
      return fromMm + length.get().quantity(QuantityKind.LENGTH, Range.POSITIVE);
    }
    double toMm = absolute.get().quantity(QuantityKind.LENGTH, Range.POSITIVE);
    if (toMm <= fromMm) {
      absolute
          .get()
          .report(
              "step-backwards",
              absolute.get().node().words(),
              "more than " + Plain.number(fromMm) + " mm, where the step begins",
              "Maybe \"length: " + absolute.get().text() + "\" was meant.");
      return Double.NaN;
    }
    return toMm;
  }
}
