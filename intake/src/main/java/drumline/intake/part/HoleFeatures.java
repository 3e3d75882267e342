package drumline.intake.part;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Range;
import drumline.intake.size.SizeField;
import drumline.intake.size.ThreadField;
import drumline.intake.size.WholeNumber;
import drumline.shop.contour.End;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.FaceHoles;
import drumline.shop.quantity.QuantityKind;
import drumline.shop.thread.ThreadSize;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads holes from the side and off-centre holes in a face, plain or tapped. */
final class HoleFeatures {

  static final Form CROSS_HOLES =
      Form.of(
          "cross holes",
          "kind",
          "id",
          "at",
          "angle",
          "lean",
          "diameter",
          "depth",
          "count",
          "reach",
          "tolerance",
          "thread");

  static final Form FACE_HOLES =
      Form.of(
          "face holes",
          "kind",
          "id",
          "end",
          "pitch-circle",
          "diameter",
          "depth",
          "count",
          "tolerance",
          "thread");

  private static final Range COUNT = Range.between(1, 60);
  private static final Range TURN = Range.between(-360, 360);
  private static final Range LEAN = Range.between(-60, 60);

  private HoleFeatures() {}

  static CrossHole crossHoles(Block block, String id, FeatureContext context) {
    @Nullable ThreadSize thread = block.find("thread").flatMap(ThreadField::read).orElse(null);
    SizeField.Size size = size(block, thread, context);
    return new CrossHole(
        id,
        block.quantity("at", QuantityKind.LENGTH, Range.POSITIVE),
        block.quantity("angle", QuantityKind.ANGLE, TURN, 0.0),
        block.quantity("lean", QuantityKind.ANGLE, LEAN, 0.0),
        size.nominalMm(),
        block.quantity("depth", QuantityKind.LENGTH, Range.POSITIVE),
        WholeNumber.read(block, "count", COUNT, 1),
        block.choice("reach", CrossHole.Reach.class, CrossHole.Reach.ONE_SIDE),
        size.tolerance(),
        thread);
  }

  static FaceHoles faceHoles(Block block, String id, FeatureContext context) {
    @Nullable ThreadSize thread = block.find("thread").flatMap(ThreadField::read).orElse(null);
    SizeField.Size size = size(block, thread, context);
    return new FaceHoles(
        id,
        block.choice("end", End.class, End.FRONT),
        block.quantity("pitch-circle", QuantityKind.LENGTH, Range.POSITIVE),
        size.nominalMm(),
        block.quantity("depth", QuantityKind.LENGTH, Range.POSITIVE),
        WholeNumber.read(block, "count", COUNT, 1),
        size.tolerance(),
        thread);
  }

  /** The hole's size; a tapped hole without one gets the tapping drill of its thread. */
  private static SizeField.Size size(
      Block block, @Nullable ThreadSize thread, FeatureContext context) {
    Optional<Field> threadField = block.find("thread");
    if (block.find("diameter").isPresent() || threadField.isEmpty()) {
      return context.sizes().read(block, "diameter", "tolerance");
    }
    if (thread == null) {
      return SizeField.broken();
    }
    double drillMm = ThreadField.tappingDrillMm(threadField.get(), thread);
    return Double.isNaN(drillMm)
        ? SizeField.broken()
        : new SizeField.Size(drillMm, context.sizes().general(threadField.get(), drillMm));
  }
}
