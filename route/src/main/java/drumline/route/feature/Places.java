package drumline.route.feature;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.part.Part;
import java.util.List;

/** Diameters of a piece where a feature stands. */
public final class Places {
  private Places() {}

  /** Largest outside diameter over a length, 0 beyond the piece. */
  public static double outsideDiameterMm(Part part, double fromZMm, double lengthMm) {
    return part.outside().stream()
        .filter(s -> s.fromZMm() < fromZMm + Math.max(lengthMm, 1e-6) && s.toZMm() > fromZMm)
        .mapToDouble(OutsideStep::largestDiameterMm)
        .max()
        .orElse(0);
  }

  /** Least bore diameter at a depth from an end, 0 where there is no bore. */
  public static double boreDiameterMm(Part part, End end, double depthMm) {
    List<BoreStep> steps = end == End.FRONT ? part.frontBore() : part.backBore();
    return steps.stream()
        .filter(s -> s.fromDepthMm() <= depthMm && s.toDepthMm() >= depthMm)
        .mapToDouble(BoreStep::smallestDiameterMm)
        .min()
        .orElse(0);
  }
}
