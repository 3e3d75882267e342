package drumline.intake.part;

import drumline.intake.form.Block;
import drumline.intake.form.Form;
import drumline.intake.form.Range;
import drumline.intake.size.SizeField;
import drumline.intake.size.ThreadField;
import drumline.shop.contour.End;
import drumline.shop.feature.Groove;
import drumline.shop.feature.Knurl;
import drumline.shop.feature.ScrewThread;
import drumline.shop.quantity.QuantityKind;
import java.util.Optional;

/** Reads grooves, threads and knurls. */
final class TurnedFeatures {

  static final Form GROOVE =
      Form.of(
          "groove",
          "kind",
          "id",
          "place",
          "end",
          "at",
          "width",
          "diameter",
          "depth",
          "tolerance",
          "roughness");

  static final Form THREAD = Form.of("thread", "kind", "id", "step", "size", "length", "method");

  static final Form KNURL = Form.of("knurl", "kind", "id", "step", "from", "to", "pitch", "form");

  private TurnedFeatures() {}

  static Groove groove(Block block, String id, FeatureContext context) {
    Groove.Place place = block.choice("place", Groove.Place.class);
    boolean face = place == Groove.Place.FACE;
    String sizeKey = face ? "depth" : "diameter";
    String otherKey = face ? "diameter" : "depth";
    block
        .find(otherKey)
        .ifPresent(
            f ->
                f.report(
                    "key-not-here",
                    "\""
                        + otherKey
                        + "\" of a groove "
                        + (face ? "in a face" : "outside or inside"),
                    "\"" + sizeKey + "\"",
                    ""));
    SizeField.Size size = context.sizes().read(block, sizeKey, "tolerance");
    return new Groove(
        id,
        place,
        block.choice("end", End.class, End.FRONT),
        block.quantity("at", QuantityKind.LENGTH, Range.NOT_NEGATIVE),
        block.quantity("width", QuantityKind.LENGTH, Range.POSITIVE),
        face ? 0 : size.nominalMm(),
        face ? size.nominalMm() : 0,
        size.tolerance(),
        PartForm.roughness(block, "roughness", context.roughnessUm()));
  }

  static Optional<ScrewThread> thread(Block block, String id) {
    String on = block.text("step");
    double lengthMm = block.quantity("length", QuantityKind.LENGTH, Range.POSITIVE);
    ScrewThread.Method method =
        block.choice("method", ScrewThread.Method.class, ScrewThread.Method.AUTO);
    return block
        .require("size")
        .flatMap(ThreadField::read)
        .map(size -> new ScrewThread(id, on, size, lengthMm, method));
  }

  static Knurl knurl(Block block, String id) {
    return new Knurl(
        id,
        block.text("step"),
        block.quantity("from", QuantityKind.LENGTH, Range.NOT_NEGATIVE),
        block.quantity("to", QuantityKind.LENGTH, Range.POSITIVE),
        block.quantity("pitch", QuantityKind.LENGTH, Range.above0To(5)),
        block.choice("form", Knurl.Form.class, Knurl.Form.STRAIGHT));
  }
}
