package drumline.intake.part;

import drumline.intake.size.SizeField;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.End;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a feature needs to know of the part.
 *
 * @param sizes reader of toleranced sizes
 * @param roughnessUm roughness where a feature says nothing
 * @param front bore steps from the front
 * @param back bore steps from the back
 */
record FeatureContext(
    SizeField sizes, double roughnessUm, List<BoreStep> front, List<BoreStep> back) {

  /** Narrowest bore met on the way from an end's face to a depth. */
  OptionalDouble findBoreMm(End end, double toDepthMm) {
    return (end == End.FRONT ? front : back)
        .stream()
            .filter(step -> step.fromDepthMm() < toDepthMm)
            .mapToDouble(BoreStep::smallestDiameterMm)
            .min();
  }
}
