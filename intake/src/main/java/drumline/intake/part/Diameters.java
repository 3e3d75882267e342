package drumline.intake.part;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.size.SizeField;
import drumline.shop.part.Bar;
import drumline.shop.quantity.UnitSystem;
import drumline.shop.tolerance.Tolerance;
import drumline.shop.tolerance.ToleranceParsed;
import drumline.shop.tolerance.ToleranceReader;
import java.util.Optional;

/**
 * Diameters of a step: one for a cylinder, two for a taper.
 *
 * @param startMm diameter at its beginning
 * @param endMm diameter at its end
 * @param tolerance tolerance of the diameter; of the larger end for a taper
 */
record Diameters(double startMm, double endMm, Tolerance tolerance) {

  static Diameters read(Block block, SizeField sizes) {
    Optional<Field> from = block.find("from-diameter");
    Optional<Field> to = block.find("to-diameter");
    Optional<Field> one = block.find("diameter");
    if (from.isEmpty() && to.isEmpty()) {
      SizeField.Size size = sizes.read(block, "diameter", "tolerance");
      return new Diameters(size.nominalMm(), size.nominalMm(), size.tolerance());
    }
    if (one.isPresent() || from.isEmpty() || to.isEmpty()) {
      block.report(
          "step-diameter",
          one.isPresent() ? "\"diameter\" beside a taper's diameters" : "half a taper",
          "\"diameter\", or \"from-diameter\" with \"to-diameter\"",
          "");
      SizeField.Size broken = SizeField.broken();
      return new Diameters(broken.nominalMm(), broken.nominalMm(), broken.tolerance());
    }
    SizeField.Size start = sizes.read(from.get(), block.find("tolerance"));
    SizeField.Size end = sizes.read(to.get(), block.find("tolerance"));
    Tolerance tolerance = end.nominalMm() > start.nominalMm() ? end.tolerance() : start.tolerance();
    return new Diameters(start.nominalMm(), end.nominalMm(), tolerance);
  }

  /** The bar's own size and tolerance class; broken where that class is not known. */
  static Diameters ofBar(Bar bar) {
    if (!(bar.sizeMm() > 0)) {
      SizeField.Size broken = SizeField.broken();
      return new Diameters(broken.nominalMm(), broken.nominalMm(), broken.tolerance());
    }
    ToleranceParsed parsed =
        ToleranceReader.read(bar.toleranceClass(), bar.sizeMm(), UnitSystem.METRIC);
    Tolerance tolerance =
        parsed instanceof ToleranceParsed.Value value
            ? value.tolerance()
            : SizeField.broken().tolerance();
    return new Diameters(bar.sizeMm(), bar.sizeMm(), tolerance);
  }
}
