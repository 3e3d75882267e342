package drumline.route.order;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.part.Part;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which steps of the contours carry a feature. */
record Hosts(Part part) {
  private static final double NEAR_MM = 0.6;

  /** Outside steps between two z. */
  Set<String> outside(double fromZMm, double toZMm) {
    return part.outside().stream()
        .filter(s -> s.fromZMm() < toZMm && s.toZMm() > fromZMm)
        .map(OutsideStep::id)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Bore steps of one end between two depths. */
  Set<String> bores(End end, double fromDepthMm, double toDepthMm) {
    return steps(end).stream()
        .filter(s -> s.fromDepthMm() < toDepthMm && s.toDepthMm() > fromDepthMm)
        .map(BoreStep::id)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Bore steps of both ends that stand at a z. */
  Set<String> boresAtZ(double zMm) {
    double back = part.lengthMm() - zMm;
    return Stream.concat(
            part.frontBore().stream().filter(s -> s.fromDepthMm() <= zMm && s.toDepthMm() >= zMm),
            part.backBore().stream().filter(s -> s.fromDepthMm() <= back && s.toDepthMm() >= back))
        .map(BoreStep::id)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Whether a stretch of the outside touches a step or its near neighbourhood. */
  boolean near(String stepId, double fromZMm, double toZMm) {
    return part.findOutside(stepId)
        .map(s -> s.fromZMm() - NEAR_MM < toZMm && s.toZMm() + NEAR_MM > fromZMm)
        .orElse(false);
  }

  private List<BoreStep> steps(End end) {
    return end == End.FRONT ? part.frontBore() : part.backBore();
  }
}
