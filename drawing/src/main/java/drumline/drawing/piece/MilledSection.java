package drumline.drawing.piece;

import drumline.shape.section.HalfSection;
import drumline.shape.section.PartSection;
import drumline.shape.section.Span;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.FaceHoles;
import drumline.shop.feature.Feature;
import drumline.shop.feature.Flats;
import drumline.shop.feature.MilledSlot;
import drumline.shop.feature.SlottedForm;
import drumline.shop.operation.CutRegion;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * The piece with what is milled, drilled from the side or slotted, turned into the drawing's plane.
 *
 * @param upper material in the section
 * @param surface what is seen from outside in the section's plane before holes are drilled
 * @param lower silhouette of the outside view
 * @param flats flats and the bar's own flats
 * @param holes holes from the side and off centre, as they lie in the section
 */
public record MilledSection(
    HalfSection upper,
    HalfSection surface,
    HalfSection lower,
    List<FlatForm> flats,
    List<HoleForm> holes) {

  private static final double FAR_MM = 1000;

  public static MilledSection of(Part part, Bar bar, PartSection turned) {
    List<FlatForm> flats = flats(part, bar);
    HalfSection upper = turned.piece();
    HalfSection lower = turned.piece().shadow();
    for (FlatForm flat : flats) {
      double bodyRMm = bodyRMm(turned.outside(), flat.fromZMm(), flat.toZMm());
      upper = upper.subtract(ring(flat, flat.surfaceRMm(bodyRMm, 90)));
      lower = lower.subtract(ring(flat, flat.silhouetteRMm(bodyRMm)));
    }
    List<HoleForm> holes = new ArrayList<>();
    HalfSection surface = upper.shadow();
    for (Feature feature : part.features()) {
      if (feature instanceof CrossHole hole) {
        holes.add(HoleForm.of(hole, topRMm(surface, hole.zMm())));
      } else if (feature instanceof FaceHoles face) {
        holes.add(HoleForm.of(face, part.lengthMm()));
      } else if (feature instanceof MilledSlot slot) {
        HalfSection room = slot(slot, part, surface);
        upper = upper.subtract(room);
        lower = slot.place() == MilledSlot.Place.OUTSIDE ? lower : lower.subtract(room);
      } else if (feature instanceof SlottedForm form) {
        upper = upper.subtract(slotted(form, part.lengthMm()));
      }
    }
    for (HoleForm hole : holes) {
      upper = upper.subtract(hole.room());
    }
    return new MilledSection(upper, surface, lower, flats, holes);
  }

  /** Greatest radius of the material at a place along the axis; 0 where there is none. */
  public static double topRMm(HalfSection section, double zMm) {
    return section.spansAtZ(zMm).stream().mapToDouble(Span::toMm).max().orElse(0);
  }

  /** Greatest radius of the body between two places. */
  public static double bodyRMm(HalfSection outside, double fromZMm, double toZMm) {
    return outside.intersect(rectangle(fromZMm, toZMm, 0, FAR_MM)).outerRMm();
  }

  private static List<FlatForm> flats(Part part, Bar bar) {
    List<FlatForm> flats = new ArrayList<>();
    part.features(Flats.class).forEach(flat -> flats.add(FlatForm.of(flat)));
    for (OutsideStep step : part.outside()) {
      FlatForm.find(step, bar).ifPresent(flats::add);
    }
    return flats;
  }

  private static HalfSection ring(FlatForm flat, double fromRMm) {
    return rectangle(flat.fromZMm(), flat.toZMm(), fromRMm, FAR_MM);
  }

  private static HalfSection slot(MilledSlot slot, Part part, HalfSection surface) {
    double lengthMm = part.lengthMm();
    double halfMm = slot.widthMm() / 2;
    double endMm = slot.zMm() + slot.lengthMm();
    return switch (slot.place()) {
      case OUTSIDE ->
          rectangle(
              slot.zMm(),
              endMm,
              topRMm(surface, (slot.zMm() + endMm) / 2) - slot.depthMm(),
              FAR_MM);
      case FRONT_FACE -> rectangle(0, slot.depthMm(), 0, halfMm);
      case BACK_FACE -> rectangle(lengthMm - slot.depthMm(), lengthMm, 0, halfMm);
    };
  }

  /** A corner, or the keyway, stands upwards. */
  private static HalfSection slotted(SlottedForm form, double lengthMm) {
    double topRMm =
        switch (form.form()) {
          case KEYWAY -> form.boreDiameterMm() / 2 + form.radialDepthMm();
          case SQUARE -> form.widthMm() / Math.sqrt(2);
          case HEXAGON -> form.widthMm() / Math.sqrt(3);
        };
    return form.end() == End.FRONT
        ? rectangle(0, form.lengthMm(), 0, topRMm)
        : rectangle(lengthMm - form.lengthMm(), lengthMm, 0, topRMm);
  }

  private static HalfSection rectangle(
      double fromZMm, double toZMm, double innerRMm, double outerRMm) {
    return HalfSection.of(CutRegion.rectangle(fromZMm, toZMm, Math.max(0, innerRMm), outerRMm));
  }
}
