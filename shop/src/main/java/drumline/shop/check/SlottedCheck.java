package drumline.shop.check;

import static drumline.shop.check.Findings.mm;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.End;
import drumline.shop.feature.Groove;
import drumline.shop.feature.SlottedForm;
import drumline.shop.part.Part;
import java.util.List;

/** Inside forms are cut from a bore that is there, leave a wall, and have room for the chips. */
final class SlottedCheck {

  /** How far beyond the form's end a groove for the chips may begin, mm. */
  private static final double RUN_OUT_MM = 0.5;

  private SlottedCheck() {}

  static void check(Part part, Profile profile, Findings findings) {
    for (SlottedForm form : part.features(SlottedForm.class)) {
      List<BoreStep> steps = form.end() == End.FRONT ? part.frontBore() : part.backBore();
      bore(form, steps, findings);
      double a = profile.zMm(form.end(), 0);
      double b = profile.zMm(form.end(), form.lengthMm());
      double outsideMm = profile.findLeastOutside(Math.min(a, b), Math.max(a, b)).orElse(0);
      if (form.radialDepthMm() <= 0) {
        findings.error(
            "form-in-air",
            form.id(),
            mm(form.widthMm()) + " across flats in a bore of Ø " + mm(form.boreDiameterMm()),
            "a bore less than the size across corners");
      }
      double reachMm = form.boreDiameterMm() / 2 + form.radialDepthMm();
      WallCheck.report(form.id(), outsideMm / 2 - reachMm, findings);
      if (!hasRunOut(form, steps, part)) {
        findings.warning(
            "slot-no-run-out",
            form.id(),
            "an inside form that ends at a wall, " + mm(form.lengthMm()) + " deep",
            "a groove or a wider bore behind it where the chips go");
      }
    }
  }

  private static void bore(SlottedForm form, List<BoreStep> steps, Findings findings) {
    boolean fits =
        steps.stream()
            .anyMatch(
                step ->
                    step.fromDepthMm() < form.lengthMm()
                        && step.toDepthMm() >= form.lengthMm() - Profile.ROUNDING_MM
                        && step.smallestDiameterMm()
                            <= form.boreDiameterMm() + Profile.ROUNDING_MM);
    if (!fits) {
      findings.error(
          "form-without-bore",
          form.id(),
          "an inside form " + mm(form.lengthMm()) + " deep in Ø " + mm(form.boreDiameterMm()),
          "a bore of that diameter, at least as deep, from the same end");
    }
    if (form.form() != SlottedForm.Form.KEYWAY && form.boreDiameterMm() < form.widthMm() * 0.98) {
      findings.warning(
          "form-bore-small",
          form.id(),
          "a bore of Ø " + mm(form.boreDiameterMm()) + " for " + mm(form.widthMm()),
          "a bore of about the size across flats, so that only corners are cut");
    }
  }

  private static boolean hasRunOut(SlottedForm form, List<BoreStep> steps, Part part) {
    double reachMm = form.boreDiameterMm() / 2 + form.radialDepthMm();
    boolean groove =
        part.features(Groove.class).stream()
            .filter(g -> g.place() == Groove.Place.INSIDE && g.end() == form.end())
            .anyMatch(
                g ->
                    g.atMm() <= form.lengthMm() + RUN_OUT_MM
                        && g.atMm() + g.widthMm() > form.lengthMm()
                        && g.bottomDiameterMm() / 2 >= reachMm - RUN_OUT_MM);
    boolean through =
        steps.stream()
            .anyMatch(
                s ->
                    s.bottom() == BoreStep.Bottom.THROUGH
                        && Math.abs(s.toDepthMm() - form.lengthMm()) <= RUN_OUT_MM);
    return groove || through;
  }
}
