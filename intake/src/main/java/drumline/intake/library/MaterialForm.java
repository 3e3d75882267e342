package drumline.intake.library;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Prices;
import drumline.intake.form.Range;
import drumline.intake.head.RatesForm;
import drumline.intake.text.Node;
import drumline.shop.material.Confidence;
import drumline.shop.material.CuttingWindow;
import drumline.shop.material.IsoGroup;
import drumline.shop.material.Material;
import drumline.shop.material.Material.ChipForm;
import drumline.shop.material.Material.CuttingForce;
import drumline.shop.quantity.MoneyPer;
import drumline.shop.quantity.QuantityKind;
import java.util.List;

/** Reads a material. */
public final class MaterialForm {

  /** Keys of a material. */
  public static final Form FORM =
      Form.of(
          "material",
          "name",
          "from",
          "aliases",
          "group",
          "density",
          "hardness",
          "tensile",
          "elasticity",
          "elongation",
          "force",
          "scale",
          "windows",
          "price",
          "chip-credit",
          "chip-form",
          "cautions",
          "confidence",
          "source");

  /** Keys of the cutting force. */
  public static final Form FORCE =
      Form.of("cutting force", "specific", "exponent", "confidence", "source");

  private static final double MPA_PER_GPA = 1000;

  private MaterialForm() {}

  static Material read(Block block) {
    Prices prices = new Prices();
    Confidence known = block.choice("confidence", Confidence.class, Confidence.MEMORY);
    return new Material(
        block.text("name"),
        block.items("aliases").stream().map(Field::text).toList(),
        block.choice("group", IsoGroup.class),
        block.quantity("density", QuantityKind.DENSITY, Range.above0To(25)),
        block.require("hardness").map(MaterialForm::hardnessHb).orElse(Double.NaN),
        block.quantity("tensile", QuantityKind.STRESS, Range.above0To(4000)),
        block.quantity("elasticity", QuantityKind.STRESS, Range.above0To(1e6)) / MPA_PER_GPA,
        RatesForm.percent(block.quantity("elongation", QuantityKind.RATIO, Range.between(0, 1))),
        block
            .require("force")
            .flatMap(f -> f.block(FORCE))
            .map(force -> force(force, known))
            .orElse(new CuttingForce(Double.NaN, Double.NaN, known, "")),
        windows(block, known),
        prices.read(block, "price", MoneyPer.KG),
        prices.readOrZero(block, "chip-credit", MoneyPer.KG),
        prices.currency(),
        block.choice("chip-form", ChipForm.class),
        block.items("cautions").stream().map(Field::text).toList(),
        known,
        block.text("source"));
  }

  private static double hardnessHb(Field field) {
    String text = field.text();
    String number = text.replaceFirst("\\s*HBW?$", "");
    return new Field(new Node.Single(number, field.node().place()), field.path(), field.reading())
        .number(Range.between(5, 800));
  }

  private static CuttingForce force(Block block, Confidence known) {
    return new CuttingForce(
        block.quantity("specific", QuantityKind.STRESS, Range.between(20, 10_000)),
        block.number("exponent", Range.between(0, 0.6)),
        block.choice("confidence", Confidence.class, known),
        block.text("source"));
  }

  private static List<CuttingWindow> windows(Block block, Confidence known) {
    return block.require("windows").map(Field::named).orElse(List.of()).stream()
        .flatMap(named -> WindowForm.read(named, known))
        .toList();
  }
}
