package drumline.drawing.part;

import drumline.drawing.piece.MilledSection;
import drumline.shape.section.HalfSection;
import drumline.shape.section.Span;
import drumline.shop.contour.Edge;
import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.Engraving;
import drumline.shop.feature.Feature;
import drumline.shop.feature.Flats;
import drumline.shop.feature.Groove;
import drumline.shop.feature.Knurl;
import drumline.shop.feature.MilledSlot;
import drumline.shop.feature.ScrewThread;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The dimensions of the outside, front to back. */
final class FlagTexts {

  private final Part part;
  private final PrintText text;
  private final HalfSection surface;
  private final EdgeNotes edges;

  FlagTexts(Part part, PrintText text, HalfSection surface, EdgeNotes edges) {
    this.part = part;
    this.text = text;
    this.surface = surface;
    this.edges = edges;
  }

  List<Flag> flags(Bar bar) {
    List<Flag> flags = new ArrayList<>();
    for (OutsideStep step : part.outside()) {
      Optional<ScrewThread> thread =
          part.features(ScrewThread.class).stream()
              .filter(t -> t.onElement().equals(step.id()))
              .findFirst();
      String words =
          thread.map(t -> text.thread(t, step.lengthMm())).orElseGet(() -> text.step(step, bar));
      String element = thread.map(ScrewThread::id).orElse(step.id());
      flags.add(flag(element, words, clearMiddleMm(step)));
      edge(flags, step, step.frontEdge(), step.fromZMm(), 1);
      edge(flags, step, step.backEdge(), step.toZMm(), -1);
    }
    for (Feature feature : part.features()) {
      feature(flags, feature);
    }
    flags.sort(Comparator.comparingDouble(Flag::zMm));
    return flags;
  }

  private void feature(List<Flag> flags, Feature feature) {
    if (feature instanceof Groove groove && groove.place() == Groove.Place.OUTSIDE) {
      double middleMm = groove.atMm() + groove.widthMm() / 2;
      flags.add(flag(groove.id(), text.groove(groove), middleMm));
    } else if (feature instanceof Flats flats) {
      double middleMm = (flats.fromZMm() + flats.toZMm()) / 2;
      flags.add(flag(flats.id(), text.flats(flats), middleMm));
    } else if (feature instanceof Knurl knurl) {
      double middleMm = (knurl.fromZMm() + knurl.toZMm()) / 2;
      flags.add(flag(knurl.id(), text.knurl(knurl), middleMm));
    } else if (feature instanceof CrossHole hole) {
      double rMm = MilledSection.topRMm(surface, hole.zMm());
      flags.add(new Flag(hole.id(), text.hole(hole), hole.zMm(), rMm));
    } else if (feature instanceof MilledSlot slot && slot.place() == MilledSlot.Place.OUTSIDE) {
      double middleMm = slot.zMm() + slot.lengthMm() / 2;
      double rMm = MilledSection.topRMm(surface, middleMm) - slot.depthMm();
      flags.add(new Flag(slot.id(), text.slot(slot), middleMm, rMm));
    } else if (feature instanceof Engraving engraving
        && engraving.place() == Engraving.Place.OUTSIDE) {
      String words = "text “" + engraving.text() + "”, " + text.length(engraving.heightMm());
      flags.add(flag(engraving.id(), words + " high", engraving.atMm()));
    }
  }

  private void edge(List<Flag> flags, OutsideStep step, Edge edge, double zMm, int inwards) {
    if (edges.isOwn(edge)) {
      flags.add(flag(step.id(), text.edge(edge), zMm + inwards * edge.sizeMm() / 2));
    }
  }

  private Flag flag(String element, String words, double zMm) {
    return new Flag(element, words, zMm, MilledSection.topRMm(surface, zMm));
  }

  /** Middle of the longest stretch of the step that no feature covers. */
  private double clearMiddleMm(OutsideStep step) {
    List<Span> covered = new ArrayList<>();
    for (Feature feature : part.features()) {
      span(feature).ifPresent(covered::add);
    }
    covered.sort(Comparator.comparingDouble(Span::fromMm));
    double fromMm = step.fromZMm() + step.frontEdge().sizeMm();
    double endMm = step.toZMm() - step.backEdge().sizeMm();
    Span best = new Span(fromMm, fromMm);
    for (Span span : covered) {
      if (span.fromMm() < step.toZMm() && span.toMm() > step.fromZMm()) {
        best = longer(best, new Span(fromMm, Math.max(fromMm, span.fromMm())));
        fromMm = Math.max(fromMm, span.toMm());
      }
    }
    best = longer(best, new Span(fromMm, Math.max(fromMm, endMm)));
    return best.lengthMm() < 0.05
        ? (step.fromZMm() + step.toZMm()) / 2
        : (best.fromMm() + best.toMm()) / 2;
  }

  private static Span longer(Span one, Span other) {
    return other.lengthMm() > one.lengthMm() ? other : one;
  }

  static Optional<Span> span(Feature feature) {
    if (feature instanceof Groove groove && groove.place() == Groove.Place.OUTSIDE) {
      return Optional.of(new Span(groove.atMm(), groove.atMm() + groove.widthMm()));
    } else if (feature instanceof Flats flats) {
      return Optional.of(new Span(flats.fromZMm(), flats.toZMm()));
    } else if (feature instanceof Knurl knurl) {
      return Optional.of(new Span(knurl.fromZMm(), knurl.toZMm()));
    } else if (feature instanceof CrossHole hole) {
      double halfMm = hole.diameterMm() / 2;
      return Optional.of(new Span(hole.zMm() - halfMm, hole.zMm() + halfMm));
    } else if (feature instanceof MilledSlot slot && slot.place() == MilledSlot.Place.OUTSIDE) {
      return Optional.of(new Span(slot.zMm(), slot.zMm() + slot.lengthMm()));
    }
    return Optional.empty();
  }
}
