package drumline.drawing.part;

import drumline.drawing.part.SideNote.Way;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.End;
import drumline.shop.feature.Engraving;
import drumline.shop.feature.FaceHoles;
import drumline.shop.feature.Feature;
import drumline.shop.feature.Groove;
import drumline.shop.feature.MilledSlot;
import drumline.shop.feature.ScrewThread;
import drumline.shop.feature.SlottedForm;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The dimensions of bores and faces. */
final class SideTexts {

  private final Part part;
  private final PrintText text;
  private final EdgeNotes edges;

  SideTexts(Part part, PrintText text, EdgeNotes edges) {
    this.part = part;
    this.text = text;
    this.edges = edges;
  }

  List<SideNote> notes(End end) {
    List<SideNote> notes = new ArrayList<>();
    List<BoreStep> steps = end == End.FRONT ? part.frontBore() : part.backBore();
    for (BoreStep step : steps) {
      bore(notes, step);
    }
    for (Feature feature : part.features()) {
      feature(notes, feature, end);
    }
    return notes;
  }

  private void bore(List<SideNote> notes, BoreStep step) {
    boolean goesThrough =
        step.bottom() == BoreStep.Bottom.THROUGH && step.toDepthMm() >= part.lengthMm() - 0.01;
    String depth = goesThrough ? "through" : text.length(step.toDepthMm()) + " deep";
    String edge = edges.isOwn(step.mouthEdge()) ? ", " + text.edge(step.mouthEdge()) : "";
    double share = clearShare(step);
    double at = step.fromDepthMm() + step.lengthMm() * share;
    double rMm =
        (step.startDiameterMm() + (step.endDiameterMm() - step.startDiameterMm()) * share) / 2;
    notes.add(
        new SideNote(
            step.id(),
            List.of(text.bore(step), depth + edge),
            step.end(),
            z(step.end(), at),
            rMm,
            Way.BORE));
    for (ScrewThread thread : part.features(ScrewThread.class)) {
      if (thread.onElement().equals(step.id())) {
        double usedMm = Math.min(thread.lengthMm(), step.lengthMm());
        double zMm = z(step.end(), step.fromDepthMm() + usedMm * 0.35);
        List<String> lines =
            List.of(thread.size().designation(), text.length(thread.lengthMm()) + " full thread");
        notes.add(
            new SideNote(
                thread.id(), lines, step.end(), zMm, thread.size().majorMm() / 2, Way.BORE));
      }
    }
  }

  /** Where along the step no inside groove is cut, as a share of its length. */
  private double clearShare(BoreStep step) {
    for (double share : new double[] {0.6, 0.8, 0.3, 0.45}) {
      double at = step.fromDepthMm() + step.lengthMm() * share;
      boolean isCut =
          part.features(Groove.class).stream()
              .filter(g -> g.place() == Groove.Place.INSIDE && g.end() == step.end())
              .anyMatch(g -> g.atMm() - 0.2 <= at && at <= g.atMm() + g.widthMm() + 0.2);
      if (!isCut) {
        return share;
      }
    }
    return 0.6;
  }

  private void feature(List<SideNote> notes, Feature feature, End end) {
    if (feature instanceof Groove groove
        && groove.end() == end
        && groove.place() != Groove.Place.OUTSIDE) {
      notes.add(groove(groove));
    } else if (feature instanceof FaceHoles holes && holes.end() == end) {
      notes.add(holes(holes));
    } else if (feature instanceof SlottedForm form && form.end() == end) {
      notes.add(slotted(form));
    } else if (feature instanceof MilledSlot slot && isAt(slot, end)) {
      String size = PrintText.times(slot.count()) + "slot " + text.length(slot.widthMm());
      notes.add(
          face(
              slot.id(),
              end,
              slot.widthMm() / 2,
              size + text.with(slot.tolerance()),
              text.length(slot.depthMm()) + " deep across"));
    } else if (feature instanceof Engraving engraving && isAt(engraving, end)) {
      String size = text.length(engraving.heightMm()) + " high on face";
      notes.add(
          face(engraving.id(), end, engraving.atMm(), "text “" + engraving.text() + "”", size));
    }
  }

  private SideNote holes(FaceHoles holes) {
    String size =
        holes.thread() != null
            ? holes.thread().designation()
            : "Ø" + text.length(holes.diameterMm()) + text.with(holes.tolerance());
    String where = text.length(holes.depthMm()) + " deep on Ø" + text.length(holes.pitchCircleMm());
    double rMm = holes.pitchCircleMm() / 2;
    return face(holes.id(), holes.end(), rMm, PrintText.times(holes.count()) + size, where);
  }

  private SideNote slotted(SlottedForm form) {
    String name = form.form().name().toLowerCase(Locale.ROOT);
    String size = name + " " + text.length(form.widthMm()) + text.with(form.tolerance());
    double zMm = z(form.end(), form.lengthMm() * 0.8);
    double rMm = form.boreDiameterMm() / 2 + form.radialDepthMm();
    List<String> lines = List.of(size, text.length(form.lengthMm()) + " deep");
    return new SideNote(form.id(), lines, form.end(), zMm, rMm, Way.BORE);
  }

  private SideNote groove(Groove groove) {
    if (groove.place() == Groove.Place.FACE) {
      double innerMm = groove.atMm();
      String size =
          "Ø" + text.length(innerMm) + " / Ø" + text.length(innerMm + 2 * groove.widthMm());
      double middleRMm = innerMm / 2 + groove.widthMm() / 2;
      String depth = text.length(groove.depthMm()) + text.with(groove.tolerance()) + " deep";
      return face(groove.id(), groove.end(), middleRMm, "groove " + size, depth);
    }
    double zMm = z(groove.end(), groove.atMm() + groove.widthMm() / 2);
    List<String> lines = List.of(text.groove(groove), "at " + text.length(groove.atMm()));
    return new SideNote(
        groove.id(), lines, groove.end(), zMm, groove.bottomDiameterMm() / 2, Way.BORE);
  }

  private SideNote face(String id, End end, double rMm, String first, String second) {
    return new SideNote(id, List.of(first, second), end, z(end, 0), rMm, Way.FACE);
  }

  private static boolean isAt(MilledSlot slot, End end) {
    return slot.place()
        == (end == End.FRONT ? MilledSlot.Place.FRONT_FACE : MilledSlot.Place.BACK_FACE);
  }

  private static boolean isAt(Engraving engraving, End end) {
    return engraving.place()
        == (end == End.FRONT ? Engraving.Place.FRONT_FACE : Engraving.Place.BACK_FACE);
  }

  private double z(End end, double depthMm) {
    return end == End.FRONT ? depthMm : part.lengthMm() - depthMm;
  }
}
