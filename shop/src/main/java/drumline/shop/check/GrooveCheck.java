package drumline.shop.check;

import static drumline.shop.check.Findings.mm;

import drumline.shop.contour.End;
import drumline.shop.feature.Groove;
import drumline.shop.part.Part;
import java.util.OptionalDouble;

/** Grooves lie on the piece, cut into it, and leave a wall. */
final class GrooveCheck {

  private GrooveCheck() {}

  static void check(Part part, Profile profile, Findings findings) {
    for (Groove groove : part.features(Groove.class)) {
      switch (groove.place()) {
        case OUTSIDE -> outside(groove, profile, findings);
        case INSIDE -> inside(groove, profile, findings);
        case FACE -> face(groove, profile, findings);
      }
    }
  }

  private static void outside(Groove groove, Profile profile, Findings findings) {
    double toMm = groove.atMm() + groove.widthMm();
    if (toMm > profile.lengthMm() + Profile.ROUNDING_MM) {
      outOfPart(groove, toMm, profile.lengthMm(), findings);
      return;
    }
    double surfaceMm = profile.findLeastOutside(groove.atMm(), toMm).orElse(0);
    if (groove.bottomDiameterMm() >= surfaceMm) {
      findings.error(
          "groove-in-air",
          groove.id(),
          "a bottom of Ø " + mm(groove.bottomDiameterMm()) + " on Ø " + mm(surfaceMm),
          "less than the surface it is cut into");
    }
    double boreMm = profile.greatestBoreMm(groove.atMm(), toMm);
    if (boreMm > 0) {
      WallCheck.report(groove.id(), (groove.bottomDiameterMm() - boreMm) / 2, findings);
    }
  }

  private static void inside(Groove groove, Profile profile, Findings findings) {
    double a = profile.zMm(groove.end(), groove.atMm());
    double b = profile.zMm(groove.end(), groove.atMm() + groove.widthMm());
    double fromMm = Math.min(a, b);
    double toMm = Math.max(a, b);
    OptionalDouble bore = profile.findLeastBore(fromMm, toMm);
    if (bore.isEmpty() || fromMm < -Profile.ROUNDING_MM) {
      outOfPart(groove, groove.atMm() + groove.widthMm(), 0, findings);
      return;
    }
    double widestMm = profile.greatestBoreMm(fromMm, toMm);
    if (groove.bottomDiameterMm() <= widestMm) {
      findings.error(
          "groove-in-air",
          groove.id(),
          "a bottom of Ø " + mm(groove.bottomDiameterMm()) + " in a bore of Ø " + mm(widestMm),
          "more than the bore it is cut into");
    }
    double outsideMm = profile.findLeastOutside(fromMm, toMm).orElse(0);
    WallCheck.report(groove.id(), (outsideMm - groove.bottomDiameterMm()) / 2, findings);
  }

  private static void face(Groove groove, Profile profile, Findings findings) {
    double depthZ = profile.zMm(groove.end(), groove.depthMm());
    double faceZ = groove.end() == End.FRONT ? 0 : profile.lengthMm();
    double fromMm = Math.min(faceZ, depthZ);
    double toMm = Math.max(faceZ, depthZ);
    double outerMm = groove.atMm() + 2 * groove.widthMm();
    double outsideMm = profile.findLeastOutside(fromMm, toMm).orElse(0);
    WallCheck.report(groove.id(), (outsideMm - outerMm) / 2, findings);
    double boreMm = profile.greatestBoreMm(fromMm, toMm);
    if (boreMm > 0) {
      WallCheck.report(groove.id(), (groove.atMm() - boreMm) / 2, findings);
    }
  }

  private static void outOfPart(Groove groove, double toMm, double limitMm, Findings findings) {
    findings.error(
        "groove-outside-part",
        groove.id(),
        "a groove up to " + mm(toMm),
        limitMm > 0 ? "up to the part's length, " + mm(limitMm) : "a place inside a bore");
  }
}
