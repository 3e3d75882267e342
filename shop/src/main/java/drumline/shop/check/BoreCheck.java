package drumline.shop.check;

import static drumline.shop.check.Findings.mm;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.part.Part;
import java.util.List;

/** Bores run inwards without gap, do not widen behind a narrow step, and meet as they say. */
final class BoreCheck {

  private BoreCheck() {}

  static void check(Part part, Findings findings) {
    steps(part.frontBore(), part.lengthMm(), findings);
    steps(part.backBore(), part.lengthMm(), findings);
    meeting(part, findings);
  }

  private static void steps(List<BoreStep> steps, double lengthMm, Findings findings) {
    double reachedMm = 0;
    double narrowestMm = Double.MAX_VALUE;
    for (BoreStep step : steps) {
      if (Math.abs(step.fromDepthMm() - reachedMm) > Profile.ROUNDING_MM) {
        findings.error(
            "bore-gap",
            step.id(),
            "begins at " + mm(step.fromDepthMm()),
            "at " + mm(reachedMm) + ", where the step before it ends");
      }
      if (step.largestDiameterMm() > narrowestMm + Profile.ROUNDING_MM) {
        findings.error(
            "bore-widens",
            step.id(),
            "Ø " + mm(step.largestDiameterMm()) + " behind Ø " + mm(narrowestMm),
            "bores that do not widen inwards",
            "Maybe an inside groove, or a bore from the other end.");
      }
      narrowestMm = Math.min(narrowestMm, step.smallestDiameterMm());
      reachedMm = step.toDepthMm();
    }
    if (reachedMm > lengthMm + Profile.ROUNDING_MM) {
      findings.error(
          "bore-too-deep",
          steps.get(steps.size() - 1).id(),
          "a bore of " + mm(reachedMm),
          "up to the part's length, " + mm(lengthMm));
    }
  }

  private static void meeting(Part part, Findings findings) {
    double frontMm = depthMm(part.frontBore());
    double backMm = depthMm(part.backBore());
    double webMm = part.lengthMm() - frontMm - backMm;
    through(part.frontBore(), webMm, findings);
    through(part.backBore(), webMm, findings);
    if (frontMm > 0 && backMm > 0 && webMm < -Profile.ROUNDING_MM) {
      findings.error(
          "bores-overlap",
          last(part.backBore()).id(),
          "bores from both ends that overlap by " + mm(-webMm),
          "bores that end where they meet",
          "Maybe a depth of " + mm(part.lengthMm() - frontMm) + ".");
    }
  }

  private static void through(List<BoreStep> steps, double webMm, Findings findings) {
    if (!steps.isEmpty() && last(steps).bottom() == Bottom.THROUGH && webMm > Profile.ROUNDING_MM) {
      findings.error(
          "bore-not-through",
          last(steps).id(),
          "a through bore that ends " + mm(webMm) + " before the far face or bore",
          "a depth that reaches it",
          "Maybe a depth of " + mm(last(steps).toDepthMm() + webMm) + ".");
    }
  }

  private static double depthMm(List<BoreStep> steps) {
    return steps.isEmpty() ? 0 : last(steps).toDepthMm();
  }

  private static BoreStep last(List<BoreStep> steps) {
    return steps.get(steps.size() - 1);
  }
}
