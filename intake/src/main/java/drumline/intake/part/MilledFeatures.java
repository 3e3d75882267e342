package drumline.intake.part;

import drumline.intake.form.Block;
import drumline.intake.form.Form;
import drumline.intake.form.Range;
import drumline.intake.size.SizeField;
import drumline.intake.size.WholeNumber;
import drumline.shop.contour.End;
import drumline.shop.feature.Deburring;
import drumline.shop.feature.Engraving;
import drumline.shop.feature.Flats;
import drumline.shop.feature.MilledSlot;
import drumline.shop.feature.SlottedForm;
import drumline.shop.quantity.QuantityKind;

/** Reads flats, slots, inside forms, engraving and deburring. */
final class MilledFeatures {

  static final Form FLATS =
      Form.of("flats", "kind", "id", "from", "to", "across", "count", "method", "tolerance");

  static final Form SLOT =
      Form.of(
          "slot", "kind", "id", "place", "at", "width", "depth", "length", "count", "tolerance");

  static final Form INSIDE_FORM =
      Form.of(
          "inside form",
          "kind",
          "id",
          "end",
          "form",
          "width",
          "radial-depth",
          "length",
          "bore-diameter",
          "tolerance");

  static final Form ENGRAVING =
      Form.of("engraving", "kind", "id", "text", "place", "at", "height", "depth");

  static final Form DEBURRING = Form.of("deburring", "kind", "id", "of", "method");

  private static final Range FLAT_COUNT = Range.between(1, 12);
  private static final Range SLOT_COUNT = Range.between(1, 60);

  private MilledFeatures() {}

  static Flats flats(Block block, String id, FeatureContext context) {
    SizeField.Size across = context.sizes().read(block, "across", "tolerance");
    return new Flats(
        id,
        block.quantity("from", QuantityKind.LENGTH, Range.NOT_NEGATIVE),
        block.quantity("to", QuantityKind.LENGTH, Range.POSITIVE),
        across.nominalMm(),
        WholeNumber.read(block, "count", FLAT_COUNT, 2),
        block.choice("method", Flats.Method.class, Flats.Method.AUTO),
        across.tolerance());
  }

  static MilledSlot slot(Block block, String id, FeatureContext context) {
    SizeField.Size width = context.sizes().read(block, "width", "tolerance");
    return new MilledSlot(
        id,
        block.choice("place", MilledSlot.Place.class),
        block.quantity("at", QuantityKind.LENGTH, Range.NOT_NEGATIVE, 0.0),
        width.nominalMm(),
        block.quantity("depth", QuantityKind.LENGTH, Range.POSITIVE),
        block.quantity("length", QuantityKind.LENGTH, Range.POSITIVE),
        WholeNumber.read(block, "count", SLOT_COUNT, 1),
        width.tolerance());
  }

  static SlottedForm insideForm(Block block, String id, FeatureContext context) {
    End end = block.choice("end", End.class, End.FRONT);
    SlottedForm.Form form = block.choice("form", SlottedForm.Form.class);
    SizeField.Size width = context.sizes().read(block, "width", "tolerance");
    double lengthMm = block.quantity("length", QuantityKind.LENGTH, Range.POSITIVE);
    double boreMm = boreMm(block, context, end, lengthMm);
    return new SlottedForm(
        id,
        end,
        form,
        width.nominalMm(),
        radialDepthMm(block, form, width.nominalMm(), boreMm),
        lengthMm,
        boreMm,
        width.tolerance());
  }

  private static double boreMm(Block block, FeatureContext context, End end, double lengthMm) {
    if (block.find("bore-diameter").isPresent()) {
      return block.quantity("bore-diameter", QuantityKind.LENGTH, Range.POSITIVE);
    }
    return context
        .findBoreMm(end, lengthMm)
        .orElseGet(() -> block.quantity("bore-diameter", QuantityKind.LENGTH, Range.POSITIVE));
  }

  /** As written, or from the corners of a hexagon or square to the bore wall. */
  private static double radialDepthMm(
      Block block, SlottedForm.Form form, double widthMm, double boreMm) {
    double cornerRadiusMm =
        switch (form) {
          case KEYWAY -> Double.NaN;
          case SQUARE -> widthMm / Math.sqrt(2);
          case HEXAGON -> widthMm / Math.sqrt(3);
        };
    return form == SlottedForm.Form.KEYWAY
        ? block.quantity("radial-depth", QuantityKind.LENGTH, Range.POSITIVE)
        : block.quantity(
            "radial-depth", QuantityKind.LENGTH, Range.POSITIVE, cornerRadiusMm - boreMm / 2);
  }

  static Engraving engraving(Block block, String id) {
    return new Engraving(
        id,
        block.text("text"),
        block.choice("place", Engraving.Place.class, Engraving.Place.OUTSIDE),
        block.quantity("at", QuantityKind.LENGTH, Range.NOT_NEGATIVE),
        block.quantity("height", QuantityKind.LENGTH, Range.between(0.3, 20)),
        block.quantity("depth", QuantityKind.LENGTH, Range.above0To(1)));
  }

  static Deburring deburring(Block block, String id) {
    return new Deburring(
        id,
        block.text("of"),
        block.choice("method", Deburring.Method.class, Deburring.Method.AUTO));
  }
}
