package drumline.intake.library;

import drumline.intake.form.Block;
import drumline.intake.form.Form;
import drumline.intake.form.Prices;
import drumline.intake.form.Range;
import drumline.shop.material.ToolMaterial;
import drumline.shop.quantity.MoneyPer;
import drumline.shop.quantity.QuantityKind;
import drumline.shop.tooling.ToolFamily;
import drumline.shop.tooling.ToolKind;

/** Reads a tool family. */
public final class ToolForm {

  /** Keys of a tool family. */
  public static final Form FORM =
      Form.of(
          "tool",
          "name",
          "from",
          "kind",
          "material",
          "smallest",
          "largest",
          "nose-radius",
          "lead-angle",
          "teeth",
          "edges",
          "reach",
          "price",
          "price-per-mm",
          "change",
          "source");

  private static final double MINUTE_S = 60;

  private ToolForm() {}

  static ToolFamily read(Block block) {
    Prices prices = new Prices();
    double smallestMm = block.quantity("smallest", QuantityKind.LENGTH, Range.POSITIVE);
    double largestMm = block.quantity("largest", QuantityKind.LENGTH, Range.POSITIVE);
    if (smallestMm > largestMm) {
      block.report(
          "span-backwards", "a smallest size above the largest", "the lesser one first", "");
    }
    return new ToolFamily(
        block.text("name"),
        block.choice("kind", ToolKind.class),
        block.choice("material", ToolMaterial.class),
        smallestMm,
        largestMm,
        block.quantity("nose-radius", QuantityKind.LENGTH, Range.NOT_NEGATIVE, 0.0),
        block.quantity("lead-angle", QuantityKind.ANGLE, Range.above0To(180), 90.0),
        count(block, "teeth", 40),
        count(block, "edges", 100),
        block.number("reach", Range.above0To(100)),
        prices.read(block, "price", MoneyPer.WHOLE),
        prices.readOrZero(block, "price-per-mm", MoneyPer.WHOLE),
        prices.currency(),
        block.quantity("change", QuantityKind.TIME, Range.POSITIVE) / MINUTE_S,
        block.text("source"));
  }

  private static int count(Block block, String key, int most) {
    double value = block.number(key, Range.between(1, most));
    if (value != Math.rint(value) && !Double.isNaN(value)) {
      block
          .require(key)
          .ifPresent(f -> f.report("not-whole", f.node().words(), "a whole number", ""));
    }
    return (int) Math.round(value);
  }
}
