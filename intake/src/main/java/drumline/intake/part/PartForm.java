package drumline.intake.part;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Range;
import drumline.intake.size.SizeField;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.contour.Relation;
import drumline.shop.feature.Feature;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.quantity.QuantityKind;
import java.util.ArrayList;
import java.util.List;

/** Reads the piece. */
public final class PartForm {

  /** Keys of the part. */
  public static final Form FORM =
      Form.of(
          "part",
          "name",
          "length",
          "length-tolerance",
          "general-tolerances",
          "roughness",
          "front-face-roughness",
          "outside",
          "front-bore",
          "back-bore",
          "features",
          "relations");

  /** Keys of a relation. */
  public static final Form RELATION = Form.of("relation", "kind", "of", "to", "value");

  private static final String GENERAL = "ISO 2768-m";
  private static final double ROUGHNESS_UM = 3.2;

  private PartForm() {}

  /** The forms of the part and its contours. */
  public static List<Form> forms() {
    return List.of(FORM, OutsideForm.FORM, BoreForm.FORM, RELATION);
  }

  /** Reads the block. */
  public static Part read(Block block, Bar bar, ElementPlaces places) {
    SizeField sizes = new SizeField(general(block));
    SizeField.Size length = sizes.read(block, "length", "length-tolerance");
    double roughnessUm = roughness(block, "roughness", ROUGHNESS_UM);
    List<OutsideStep> outside =
        new OutsideForm(sizes, bar, roughnessUm, places).read(block.items("outside"));
    if (block.find("outside").isEmpty()) {
      block.require("outside");
    }
    BoreForm bores = new BoreForm(sizes, roughnessUm, places);
    List<BoreStep> front = bores.read(block.items("front-bore"), End.FRONT);
    List<BoreStep> back = bores.read(block.items("back-bore"), End.BACK);
    FeatureContext context = new FeatureContext(sizes, roughnessUm, front, back);
    List<Feature> features = FeatureForm.read(block.items("features"), context, places);
    return new Part(
        block.text("name"),
        length.nominalMm(),
        length.tolerance(),
        roughnessUm,
        roughness(block, "front-face-roughness", roughnessUm),
        outside,
        front,
        back,
        features,
        relations(block.items("relations"), places));
  }

  private static String general(Block block) {
    String text = block.text("general-tolerances", GENERAL);
    if (SizeField.isGeneral(text)) {
      return text;
    }
    block
        .find("general-tolerances")
        .ifPresent(
            (Field f) ->
                f.report(
                    "tolerance-not-defined",
                    f.node().words(),
                    "ISO 2768-f, ISO 2768-m, ISO 2768-c or ISO 2768-v",
                    "Maybe \"" + GENERAL + "\"."));
    return GENERAL;
  }

  static double roughness(Block block, String key, double otherwise) {
    return block.quantity(key, QuantityKind.ROUGHNESS, Range.above0To(100), otherwise);
  }

  private static List<Relation> relations(List<Field> items, ElementPlaces places) {
    List<Relation> relations = new ArrayList<>();
    for (Field item : items) {
      item.block(RELATION).ifPresent(block -> relations.add(relation(block)));
      places.note("relation " + relations.size(), item.where());
    }
    return relations;
  }

  private static Relation relation(Block block) {
    return new Relation(
        block.choice("kind", Relation.Kind.class),
        block.text("of"),
        block.text("to"),
        block.quantity("value", QuantityKind.LENGTH, Range.POSITIVE));
  }
}
