package drumline.shape.section;

import drumline.shop.contour.End;
import drumline.shop.feature.Groove;
import drumline.shop.operation.CutRegion;

/** The room that a groove takes in the half-section. */
final class GrooveSection {

  private GrooveSection() {}

  static HalfSection of(Groove groove, double partLengthMm, double farOutMm) {
    double atMm = groove.atMm();
    double bottomMm = groove.bottomDiameterMm() / 2;
    return switch (groove.place()) {
      case OUTSIDE -> rectangle(atMm, atMm + groove.widthMm(), bottomMm, farOutMm);
      case INSIDE -> fromEnd(groove, partLengthMm, atMm, atMm + groove.widthMm(), 0, bottomMm);
      case FACE ->
          fromEnd(groove, partLengthMm, 0, groove.depthMm(), atMm / 2, atMm / 2 + groove.widthMm());
    };
  }

  private static HalfSection fromEnd(
      Groove groove,
      double partLengthMm,
      double fromDepthMm,
      double toDepthMm,
      double innerMm,
      double outerMm) {
    return groove.end() == End.FRONT
        ? rectangle(fromDepthMm, toDepthMm, innerMm, outerMm)
        : rectangle(partLengthMm - toDepthMm, partLengthMm - fromDepthMm, innerMm, outerMm);
  }

  private static HalfSection rectangle(
      double fromZMm, double toZMm, double innerMm, double outerMm) {
    return HalfSection.of(CutRegion.rectangle(fromZMm, toZMm, innerMm, outerMm));
  }
}
