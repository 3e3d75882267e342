package drumline.shop.check;

import static drumline.shop.check.Findings.mm;

import drumline.shop.contour.End;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.FaceHoles;
import drumline.shop.part.Part;

/** Cross holes and off-centre holes meet material, and leave some beside them. */
final class HoleCheck {

  /** Least web between neighbouring holes; common practice. */
  private static final double WEB_MM = 0.3;

  private HoleCheck() {}

  static void check(Part part, Profile profile, Findings findings) {
    part.features(CrossHole.class).forEach(hole -> cross(hole, profile, findings));
    part.features(FaceHoles.class).forEach(holes -> face(holes, profile, findings));
  }

  private static void cross(CrossHole hole, Profile profile, Findings findings) {
    double fromMm = hole.zMm() - hole.diameterMm() / 2;
    double toMm = hole.zMm() + hole.diameterMm() / 2;
    if (fromMm < WallCheck.LEAST_MM || toMm > profile.lengthMm() - WallCheck.LEAST_MM) {
      findings.error(
          "hole-outside-part",
          hole.id(),
          "a hole from " + mm(fromMm) + " to " + mm(toMm),
          "between the faces, "
              + mm(WallCheck.LEAST_MM)
              + " to "
              + mm(profile.lengthMm() - WallCheck.LEAST_MM));
      return;
    }
    double outsideMm = profile.findGreatestOutside(fromMm, toMm).orElse(0);
    if (hole.diameterMm() >= outsideMm) {
      findings.error(
          "hole-too-large",
          hole.id(),
          "Ø " + mm(hole.diameterMm()) + " across Ø " + mm(outsideMm),
          "less than the step it goes into");
    }
    boolean oneSide = hole.reach() == CrossHole.Reach.ONE_SIDE;
    if (oneSide && hole.depthMm() >= outsideMm / Math.cos(Math.toRadians(hole.leanDeg()))) {
      findings.error(
          "hole-too-deep",
          hole.id(),
          "a depth of " + mm(hole.depthMm()) + " in Ø " + mm(outsideMm),
          "less than the diameter",
          "Maybe \"reach: through\".");
    }
  }

  private static void face(FaceHoles holes, Profile profile, Findings findings) {
    double faceMm = holes.end() == End.FRONT ? 0 : profile.lengthMm();
    double bottomMm = profile.zMm(holes.end(), holes.depthMm());
    double fromMm = Math.min(faceMm, bottomMm);
    double toMm = Math.max(faceMm, bottomMm);
    double outsideMm = profile.findLeastOutside(fromMm, toMm).orElse(0);
    WallCheck.report(
        holes.id(), (outsideMm - holes.pitchCircleMm() - holes.diameterMm()) / 2, findings);
    double boreMm = profile.greatestBoreMm(fromMm, toMm);
    if (boreMm > 0) {
      WallCheck.report(
          holes.id(), (holes.pitchCircleMm() - holes.diameterMm() - boreMm) / 2, findings);
    }
    double chordMm = holes.pitchCircleMm() * Math.sin(Math.PI / Math.max(2, holes.count()));
    if (holes.count() > 1 && chordMm - holes.diameterMm() < WEB_MM) {
      findings.error(
          "holes-too-close",
          holes.id(),
          holes.count()
              + " holes of Ø "
              + mm(holes.diameterMm())
              + ", "
              + mm(chordMm)
              + " from middle to middle",
          mm(WEB_MM) + " between them or more");
    }
    if (holes.depthMm() >= profile.lengthMm()) {
      findings.error(
          "hole-too-deep",
          holes.id(),
          "a depth of " + mm(holes.depthMm()),
          "less than the part's length, " + mm(profile.lengthMm()));
    }
  }
}
