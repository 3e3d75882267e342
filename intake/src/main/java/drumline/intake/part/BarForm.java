package drumline.intake.part;

import drumline.intake.form.Block;
import drumline.intake.form.Form;
import drumline.intake.form.Range;
import drumline.shop.part.Bar;
import drumline.shop.quantity.QuantityKind;
import drumline.shop.quantity.UnitSystem;
import drumline.shop.tolerance.ToleranceParsed;
import drumline.shop.tolerance.ToleranceReader;

/** Reads the stock. */
public final class BarForm {

  /** Keys of the bar. */
  public static final Form FORM = Form.of("bar", "shape", "size", "bore", "tolerance", "length");

  private static final double USUAL_LENGTH_MM = 3000;
  private static final String ROUND_CLASS = "h9";
  private static final String FLAT_CLASS = "h11";

  private BarForm() {}

  /** Reads the block. */
  public static Bar read(Block block) {
    Bar.Shape shape = block.choice("shape", Bar.Shape.class, Bar.Shape.ROUND);
    double sizeMm = block.quantity("size", QuantityKind.LENGTH, Range.above0To(500));
    double boreMm = block.quantity("bore", QuantityKind.LENGTH, Range.NOT_NEGATIVE, 0.0);
    if (boreMm >= sizeMm) {
      block.report("tube-wall", "a bore as large as the bar", "a bore below the bar's size", "");
    }
    String usual = shape == Bar.Shape.ROUND ? ROUND_CLASS : FLAT_CLASS;
    String toleranceClass = block.text("tolerance", usual);
    if (sizeMm > 0) {
      checkClass(block, toleranceClass, sizeMm);
    }
    double lengthMm =
        block.quantity("length", QuantityKind.LENGTH, Range.between(100, 20_000), USUAL_LENGTH_MM);
    return new Bar(shape, sizeMm, boreMm, toleranceClass, lengthMm);
  }

  private static void checkClass(Block block, String toleranceClass, double sizeMm) {
    if (ToleranceReader.read(toleranceClass, sizeMm, UnitSystem.METRIC)
        instanceof ToleranceParsed.Refused refused) {
      block
          .find("tolerance")
          .ifPresent(
              f -> f.report(refused.code(), refused.found(), refused.allowed(), refused.hint()));
    }
  }
}
