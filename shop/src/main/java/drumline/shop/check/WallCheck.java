package drumline.shop.check;

import static drumline.shop.check.Findings.mm;

import drumline.shop.contour.BoreStep;
import drumline.shop.part.Part;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Between bores and outside some wall is left. */
final class WallCheck {

  /** Wall that a piece must have at least; common practice. */
  static final double LEAST_MM = 0.3;

  /** Wall below which gripping and cutting bend it; common practice. */
  static final double THIN_MM = 0.8;

  private WallCheck() {}

  static void check(Part part, Profile profile, Findings findings) {
    Stream.concat(part.frontBore().stream(), part.backBore().stream())
        .forEach(step -> wall(step, profile, findings));
  }

  private static void wall(BoreStep step, Profile profile, Findings findings) {
    double a = profile.zMm(step.end(), step.fromDepthMm());
    double b = profile.zMm(step.end(), step.toDepthMm());
    OptionalDouble outside = profile.findLeastOutside(Math.min(a, b), Math.max(a, b));
    if (outside.isPresent()) {
      report(step.id(), (outside.getAsDouble() - step.largestDiameterMm()) / 2, findings);
    }
  }

  /** Reports a wall that is missing, or thin. */
  static void report(String id, double wallMm, Findings findings) {
    if (wallMm < LEAST_MM - Profile.ROUNDING_MM) {
      findings.error(
          "no-wall",
          id,
          wallMm <= 0 ? "no wall left" : "a wall of " + mm(wallMm),
          mm(LEAST_MM) + " or more");
    } else if (wallMm < THIN_MM - Profile.ROUNDING_MM) {
      findings.warning("thin-wall", id, "a wall of " + mm(wallMm), mm(THIN_MM) + " or more");
    }
  }
}
