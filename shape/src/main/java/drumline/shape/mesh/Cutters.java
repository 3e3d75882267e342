package drumline.shape.mesh;

import drumline.shape.section.PartSection;
import drumline.shape.section.Span;
import drumline.shop.contour.End;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.FaceHoles;
import drumline.shop.feature.Flats;
import drumline.shop.feature.MilledSlot;
import drumline.shop.feature.SlottedForm;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * The bodies that cutters sweep for the features of a piece, each a little longer than the feature
 * where it leaves the piece, so that no two surfaces lie in one another.
 *
 * @param part the piece
 * @param section its half-section
 * @param chordMm how far a chord may lie from its circle
 * @param nudgeMm by how much ends are moved outwards
 */
record Cutters(Part part, PartSection section, double chordMm, double nudgeMm) {
  private static final double OUT_MM = 1;

  Cutters withNudge(double otherMm) {
    return new Cutters(part, section, chordMm, otherMm);
  }

  /** Cutters of all features, in the order of the print. */
  List<TriangleMesh> all(Bar bar) {
    List<TriangleMesh> cutters = new ArrayList<>();
    int sides = bar.shape() == Bar.Shape.HEXAGON ? 6 : bar.shape() == Bar.Shape.SQUARE ? 4 : 0;
    for (int i = 0; i < sides; i++) {
      cutters.add(
          flat(
              2 * Math.PI * i / sides,
              bar.sizeMm() / 2,
              new double[] {-OUT_MM, part.lengthMm() + OUT_MM},
              i,
              Mark.BAR));
    }
    part.features(Flats.class).forEach(flats -> flats(flats, cutters));
    part.features(MilledSlot.class).forEach(slot -> slots(slot, cutters));
    part.features(SlottedForm.class).forEach(form -> cutters.add(form(form, cutters.size())));
    part.features(CrossHole.class).forEach(hole -> crossHoles(hole, cutters));
    part.features(FaceHoles.class).forEach(holes -> faceHoles(holes, cutters));
    return cutters;
  }

  /** How far a cutter's ends are moved: each its own way, so that no two ends lie in one plane. */
  private double ownMm(int index) {
    return nudgeMm * (1 + 0.613 * index);
  }

  private double reachMm() {
    return section.outside().outerRMm() + OUT_MM;
  }

  private TriangleMesh flat(double angleRad, double offMm, double[] range, int index, Mark mark) {
    double far = reachMm() * 1.5;
    return PrismMesh.alongZ(angleRad + 1e-7)
        .box(
            new double[] {offMm + nudgeMm / 3, far},
            new double[] {-far * 1.01, far},
            new double[] {range[0] - ownMm(index), range[1] + ownMm(index)},
            mark);
  }

  private void flats(Flats flats, List<TriangleMesh> cutters) {
    double fromMm = flats.fromZMm() < 1e-6 ? -OUT_MM : flats.fromZMm();
    double toMm = flats.toZMm() > part.lengthMm() - 1e-6 ? part.lengthMm() + OUT_MM : flats.toZMm();
    for (int i = 0; i < flats.count(); i++) {
      double angle = 2 * Math.PI * i / flats.count();
      double[] range = {fromMm, toMm};
      cutters.add(flat(angle, flats.acrossMm() / 2, range, cutters.size(), Mark.MILLED));
    }
  }

  /** Radius of the outside at a place along the axis. */
  private double surfaceMm(double zMm) {
    double z = Math.max(1e-3, Math.min(part.lengthMm() - 1e-3, zMm));
    return section.outside().spansAtZ(z).stream().mapToDouble(Span::toMm).max().orElse(reachMm());
  }

  private void slots(MilledSlot slot, List<TriangleMesh> cutters) {
    double half = slot.widthMm() / 2;
    double[] across = {-half, half};
    for (int i = 0; i < slot.count(); i++) {
      double angle = 2 * Math.PI * i / slot.count() + 1e-7;
      if (slot.place() == MilledSlot.Place.OUTSIDE) {
        double toMm = slot.zMm() + slot.lengthMm();
        double floor = surfaceMm((slot.zMm() + toMm) / 2) - slot.depthMm();
        double[] radial = {floor, reachMm()};
        cutters.add(
            PrismMesh.alongZ(angle)
                .box(radial, across, ends(slot.zMm(), toMm, cutters.size()), Mark.MILLED));
      } else {
        boolean isFront = slot.place() == MilledSlot.Place.FRONT_FACE;
        double l = part.lengthMm();
        double[] z =
            isFront
                ? new double[] {-OUT_MM, slot.depthMm() + ownMm(cutters.size())}
                : new double[] {l - slot.depthMm() - ownMm(cutters.size()), l + OUT_MM};
        double length = Math.max(slot.lengthMm() / 2, 0) + nudgeMm;
        boolean isAcross = 2 * length >= 2 * surfaceMm(isFront ? 0 : l) - 0.1;
        double far = isAcross ? reachMm() : length;
        cutters.add(
            PrismMesh.alongZ(angle).box(new double[] {-far, far * 1.01}, across, z, Mark.MILLED));
      }
    }
  }

  private double[] ends(double fromMm, double toMm, int index) {
    return new double[] {
      fromMm < 1e-6 ? -OUT_MM : fromMm - ownMm(index),
      toMm > part.lengthMm() - 1e-6 ? part.lengthMm() + OUT_MM : toMm + ownMm(index)
    };
  }

  private TriangleMesh form(SlottedForm form, int index) {
    double l = part.lengthMm();
    double[] z =
        form.end() == End.FRONT
            ? new double[] {-OUT_MM, form.lengthMm() + ownMm(index)}
            : new double[] {l - form.lengthMm() - ownMm(index), l + OUT_MM};
    double half = form.widthMm() / 2;
    PrismMesh frame = PrismMesh.alongZ(1e-7);
    if (form.form() == SlottedForm.Form.KEYWAY) {
      double top = form.boreDiameterMm() / 2 + form.radialDepthMm();
      double inner = Math.min(form.boreDiameterMm() / 4, half / 2) + nudgeMm;
      return frame.box(new double[] {inner, top}, new double[] {-half, half}, z, Mark.MILLED);
    }
    int count = form.form().sideCount();
    double corner = half / Math.cos(Math.PI / count);
    return frame.prism(PrismMesh.regular(count, corner, 0.001), z[0], z[1], 0, Mark.MILLED);
  }

  private void crossHoles(CrossHole hole, List<TriangleMesh> cutters) {
    double lean = Math.toRadians(hole.leanDeg());
    double surface = surfaceMm(hole.zMm());
    double mouth = surface / Math.cos(lean);
    double radius = hole.diameterMm() / 2;
    int count = LatheMesh.sectorCount(radius, chordMm);
    double over =
        OUT_MM + (reachMm() - surface) / Math.cos(lean) + radius * Math.tan(Math.abs(lean));
    for (int i = 0; i < hole.count(); i++) {
      double angle = Math.toRadians(hole.angleDeg()) + 2 * Math.PI * i / hole.count();
      double c = Math.cos(angle);
      double s = Math.sin(angle);
      double[] along = {Math.cos(lean) * c, Math.cos(lean) * s, Math.sin(lean)};
      double[] x = {-s, c, 0};
      double[] y = {-Math.sin(lean) * c, -Math.sin(lean) * s, Math.cos(lean)};
      double foot = hole.zMm() - surface * Math.tan(lean);
      PrismMesh frame = new PrismMesh(new double[] {0, 0, foot + nudgeMm / 3}, x, y, along);
      boolean isThrough = hole.reach() == CrossHole.Reach.THROUGH;
      double from = isThrough ? -mouth - over : mouth - hole.depthMm();
      double tip = isThrough ? 0 : tipMm(radius);
      cutters.add(frame.round(radius, count, new double[] {from, mouth + over}, tip, Mark.DRILLED));
    }
  }

  /** Length of a drill's cone. */
  private static double tipMm(double radiusMm) {
    return radiusMm / Math.tan(Math.toRadians(PartSection.USUAL_POINT_ANGLE_DEG / 2));
  }

  private void faceHoles(FaceHoles holes, List<TriangleMesh> cutters) {
    double radius = holes.diameterMm() / 2;
    int count = LatheMesh.sectorCount(radius, chordMm);
    boolean isFront = holes.end() == End.FRONT;
    for (int i = 0; i < holes.count(); i++) {
      double angle = 2 * Math.PI * i / holes.count();
      double c = Math.cos(angle);
      double s = Math.sin(angle);
      double r = holes.pitchCircleMm() / 2;
      double z = isFront ? 0 : part.lengthMm();
      PrismMesh frame =
          new PrismMesh(
              new double[] {r * c, r * s, z},
              new double[] {c, s, 0},
              isFront ? new double[] {s, -c, 0} : new double[] {-s, c, 0},
              new double[] {0, 0, isFront ? -1 : 1});
      double[] range = {-holes.depthMm(), OUT_MM};
      cutters.add(frame.round(radius, count, range, tipMm(radius), Mark.DRILLED));
    }
  }
}
