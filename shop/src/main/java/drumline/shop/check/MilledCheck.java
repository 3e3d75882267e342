package drumline.shop.check;

import static drumline.shop.check.Findings.mm;

import drumline.shop.feature.Engraving;
import drumline.shop.feature.Flats;
import drumline.shop.feature.Knurl;
import drumline.shop.feature.MilledSlot;
import drumline.shop.part.Part;

/** Flats, slots, knurls and engraving lie on the piece and can be reached. */
final class MilledCheck {

  /** Narrowest end mill that flats between two shoulders need; common practice. */
  private static final double CUTTER_MM = 2;

  private MilledCheck() {}

  static void check(Part part, Profile profile, Findings findings) {
    part.features(Flats.class).forEach(flats -> flats(flats, profile, findings));
    part.features(MilledSlot.class).forEach(slot -> slot(slot, profile, findings));
    part.features(Knurl.class).forEach(knurl -> knurl(knurl, part, findings));
    part.features(Engraving.class).forEach(text -> engraving(text, profile, findings));
  }

  private static void flats(Flats flats, Profile profile, Findings findings) {
    if (!inPart(flats.id(), flats.fromZMm(), flats.toZMm(), profile, findings)) {
      return;
    }
    double surfaceMm = profile.findGreatestOutside(flats.fromZMm(), flats.toZMm()).orElse(0);
    if (flats.acrossMm() >= surfaceMm) {
      findings.error(
          "flats-in-air",
          flats.id(),
          mm(flats.acrossMm()) + " across flats on Ø " + mm(surfaceMm),
          "less than the diameter they are cut on");
    }
    double boreMm = profile.greatestBoreMm(flats.fromZMm(), flats.toZMm());
    if (boreMm > 0) {
      WallCheck.report(flats.id(), (flats.acrossMm() - boreMm) / 2, findings);
    }
    boolean shoulderBefore = rises(profile, flats.fromZMm() - CUTTER_MM, flats.fromZMm(), flats);
    boolean shoulderAfter = rises(profile, flats.toZMm(), flats.toZMm() + CUTTER_MM, flats);
    if (shoulderBefore && shoulderAfter && flats.toZMm() - flats.fromZMm() < CUTTER_MM) {
      findings.error(
          "flats-not-reachable",
          flats.id(),
          "flats " + mm(flats.toZMm() - flats.fromZMm()) + " long between two shoulders",
          mm(CUTTER_MM) + " or more for a cutter");
    }
  }

  private static boolean rises(Profile profile, double fromMm, double toMm, Flats flats) {
    return profile.findGreatestOutside(fromMm, toMm).orElse(0) > flats.acrossMm();
  }

  private static void slot(MilledSlot slot, Profile profile, Findings findings) {
    switch (slot.place()) {
      case OUTSIDE -> {
        double toMm = slot.zMm() + slot.lengthMm();
        if (inPart(slot.id(), slot.zMm(), toMm, profile, findings)) {
          double surfaceMm = profile.findLeastOutside(slot.zMm(), toMm).orElse(0);
          double boreMm = profile.greatestBoreMm(slot.zMm(), toMm);
          WallCheck.report(slot.id(), (surfaceMm - boreMm) / 2 - slot.depthMm(), findings);
        }
      }
      case FRONT_FACE, BACK_FACE -> {
        if (slot.depthMm() >= profile.lengthMm()) {
          findings.error(
              "slot-too-deep",
              slot.id(),
              "a slot " + mm(slot.depthMm()) + " deep",
              "less than the part's length, " + mm(profile.lengthMm()));
        }
      }
    }
  }

  private static void knurl(Knurl knurl, Part part, Findings findings) {
    part.findOutside(knurl.onElement())
        .filter(
            step ->
                knurl.fromZMm() < step.fromZMm() - Profile.ROUNDING_MM
                    || knurl.toZMm() > step.toZMm() + Profile.ROUNDING_MM
                    || knurl.toZMm() <= knurl.fromZMm())
        .ifPresent(
            step ->
                findings.error(
                    "knurl-off-step",
                    knurl.id(),
                    "a knurl from " + mm(knurl.fromZMm()) + " to " + mm(knurl.toZMm()),
                    "within its step, " + mm(step.fromZMm()) + " to " + mm(step.toZMm())));
  }

  private static void engraving(Engraving text, Profile profile, Findings findings) {
    double half = text.heightMm() / 2;
    if (text.place() == Engraving.Place.OUTSIDE) {
      inPart(text.id(), text.atMm() - half, text.atMm() + half, profile, findings);
      return;
    }
    boolean front = text.place() == Engraving.Place.FRONT_FACE;
    double z = front ? 0 : profile.lengthMm() - text.depthMm();
    double radiusMm = profile.findLeastOutside(z, z + text.depthMm()).orElse(0) / 2;
    double boreMm = profile.greatestBoreMm(z, z + text.depthMm()) / 2;
    if (text.atMm() + half > radiusMm || text.atMm() - half < boreMm) {
      findings.error(
          "text-off-face",
          text.id(),
          "text on a radius of " + mm(text.atMm()),
          "on the face, radius " + mm(boreMm + half) + " to " + mm(radiusMm - half));
    }
  }

  private static boolean inPart(
      String id, double fromMm, double toMm, Profile profile, Findings findings) {
    boolean in =
        fromMm >= -Profile.ROUNDING_MM
            && toMm > fromMm
            && toMm <= profile.lengthMm() + Profile.ROUNDING_MM;
    if (!in) {
      findings.error(
          "feature-outside-part",
          id,
          "from " + mm(fromMm) + " to " + mm(toMm),
          "within the part, 0 to " + mm(profile.lengthMm()));
    }
    return in;
  }
}
