package drumline.shape.proof;

import drumline.shape.proof.Finding.Kind;
import drumline.shape.proof.Finding.Surface;
import drumline.shape.section.HalfSection;
import drumline.shape.section.PartSection;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.operation.CutRegion;
import drumline.shop.part.Part;
import java.util.Optional;
import java.util.stream.Stream;

/** Says on which surface and element a differing place lies. */
final class FindingPlace {

  private static final double TOUCH_MM = 0.01;

  private final Part part;
  private final HalfSection air;
  private final HalfSection bore;

  FindingPlace(Part part, PartSection print) {
    this.part = part;
    this.bore = print.bore();
    double outMm = print.outside().outerRMm() + 100;
    HalfSection room = HalfSection.of(CutRegion.rectangle(0, part.lengthMm(), 0, outMm));
    this.air = room.subtract(print.outside());
  }

  Optional<Finding> find(Kind kind, HalfSection region, double ignoredUm) {
    double thicknessMm = region.thicknessMm();
    if (thicknessMm * 1000 < ignoredUm) {
      return Optional.empty();
    }
    Surface surface = surface(region);
    return Optional.of(new Finding(kind, surface, element(surface, region), region, thicknessMm));
  }

  private Surface surface(HalfSection region) {
    double middleMm = region.centroidZMm();
    if (middleMm < 0) {
      return Surface.FRONT_FACE;
    }
    if (middleMm > part.lengthMm()) {
      return Surface.BACK_FACE;
    }
    double toAirMm = region.distanceMm(air);
    double toBoreMm = region.distanceMm(bore);
    double toFrontMm = region.fromZMm();
    double toBackMm = part.lengthMm() - region.toZMm();
    if (Math.min(toAirMm, toBoreMm) > TOUCH_MM && Math.min(toFrontMm, toBackMm) <= TOUCH_MM) {
      return toFrontMm <= toBackMm ? Surface.FRONT_FACE : Surface.BACK_FACE;
    }
    return toBoreMm < toAirMm ? Surface.INSIDE : Surface.OUTSIDE;
  }

  private String element(Surface surface, HalfSection region) {
    double middleMm = region.centroidZMm();
    return switch (surface) {
      case FRONT_FACE, BACK_FACE -> "";
      case OUTSIDE ->
          part.outside().stream()
              .filter(step -> step.fromZMm() <= middleMm && middleMm <= step.toZMm())
              .map(OutsideStep::id)
              .findFirst()
              .orElse("");
      case INSIDE ->
          Stream.concat(part.frontBore().stream(), part.backBore().stream())
              .filter(step -> covers(step, middleMm))
              .map(BoreStep::id)
              .findFirst()
              .orElse("");
    };
  }

  private boolean covers(BoreStep step, double zMm) {
    double depthMm = step.end() == End.FRONT ? zMm : part.lengthMm() - zMm;
    return step.fromDepthMm() <= depthMm && depthMm <= step.toDepthMm();
  }
}
