package drumline.shop.check;

import static drumline.shop.check.Findings.mm;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.OutsideStep;
import drumline.shop.part.Part;
import drumline.shop.tolerance.StandardTolerance;
import drumline.shop.tolerance.Tolerance;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Tolerances and surfaces finer than any process on these machines. */
final class FinenessCheck {

  /** Finest grade held on an automatic lathe; Source: [MDRAW] p. 210, fine boring. */
  private static final int FINEST_GRADE = 5;

  /** Finest surface that burnishing leaves, Ra; from memory. */
  private static final double FINEST_RA_UM = 0.05;

  private FinenessCheck() {}

  static void check(Part part, Findings findings) {
    for (OutsideStep step : part.outside()) {
      if (step.surface() == OutsideStep.Surface.TURNED) {
        size(step.id(), step.largestDiameterMm(), step.tolerance(), findings);
        surface(step.id(), step.roughnessRaUm(), findings);
      }
    }
    Stream.concat(part.frontBore().stream(), part.backBore().stream())
        .forEach(
            (BoreStep step) -> {
              size(step.id(), step.largestDiameterMm(), step.tolerance(), findings);
              surface(step.id(), step.roughnessRaUm(), findings);
            });
    size("part", part.lengthMm(), part.lengthTolerance(), findings);
  }

  private static void size(String id, double nominalMm, Tolerance tolerance, Findings findings) {
    OptionalDouble finest = StandardTolerance.findWidthMm(FINEST_GRADE, nominalMm);
    if (finest.isPresent() && tolerance.widthMm() < finest.getAsDouble() - Profile.ROUNDING_MM) {
      findings.warning(
          "tolerance-too-fine",
          id,
          "a tolerance of " + mm(tolerance.widthMm()) + " at " + mm(nominalMm),
          mm(finest.getAsDouble()) + " or more, IT" + FINEST_GRADE + "; finer must be ground");
    }
  }

  private static void surface(String id, double roughnessRaUm, Findings findings) {
    if (roughnessRaUm < FINEST_RA_UM) {
      findings.warning(
          "surface-too-fine",
          id,
          "Ra " + roughnessRaUm + " µm",
          "Ra " + FINEST_RA_UM + " µm or more; finer must be ground or lapped");
    }
  }
}
