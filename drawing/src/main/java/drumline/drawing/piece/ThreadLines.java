package drumline.drawing.piece;

import drumline.drawing.svg.SvgPen;
import drumline.drawing.view.ViewFrame;
import drumline.shape.section.HalfSection;
import drumline.shape.section.Span;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.ScrewThread;
import drumline.shop.part.Part;

/**
 * Threads as the standard draws them: crests as the contour, roots as a thin line, the end of the
 * full thread as a wide line.
 *
 * <p>Formula: root of an outside thread d₃ = d − 1.22687·P, with d major diameter and P pitch in
 * mm.
 *
 * <p>Source: [ISO-6410-1] conventional representation; [ISO-724] basic dimensions (both from
 * memory).
 */
public final class ThreadLines {

  private static final double ROOT_RATIO = 1.22687;
  private static final double SAME_MM = 0.2;

  private ThreadLines() {}

  public static void draw(
      SvgPen pen, Part part, HalfSection upper, HalfSection shadow, ViewFrame frame) {
    for (ScrewThread thread : part.features(ScrewThread.class)) {
      part.findOutside(thread.onElement())
          .ifPresent(step -> outside(pen, part, thread, step, shadow, frame));
      part.findBore(thread.onElement())
          .ifPresent(step -> inside(pen, part, thread, step, upper, frame));
    }
  }

  private static void outside(
      SvgPen pen,
      Part part,
      ScrewThread thread,
      OutsideStep step,
      HalfSection shadow,
      ViewFrame frame) {
    double rootRMm = (thread.size().majorMm() - ROOT_RATIO * thread.size().pitchMm()) / 2;
    double crestRMm = step.largestDiameterMm() / 2;
    Span zone = zone(part, step, thread.lengthMm());
    for (Span span : shadow.spansAtR(rootRMm)) {
      double fromMm = Math.max(span.fromMm(), zone.fromMm());
      double toMm = Math.min(span.toMm(), zone.toMm());
      if (toMm > fromMm) {
        pen.line("thin", frame.x(fromMm), frame.up(rootRMm), frame.x(toMm), frame.up(rootRMm));
        pen.line("thin", frame.x(fromMm), frame.down(rootRMm), frame.x(toMm), frame.down(rootRMm));
      }
    }
    if (step.lengthMm() - zone.lengthMm() > SAME_MM) {
      boolean fromFront = zone.fromMm() <= step.fromZMm();
      double endX = frame.x(fromFront ? zone.toMm() : zone.fromMm());
      pen.line("wide", endX, frame.up(rootRMm), endX, frame.up(crestRMm));
      pen.line("wide", endX, frame.down(0), endX, frame.down(crestRMm));
    }
  }

  /** Where the thread lies: from the end of the step that a tool reaches freely. */
  private static Span zone(Part part, OutsideStep step, double lengthMm) {
    double usedMm = Math.min(lengthMm, step.lengthMm());
    int at = part.outside().indexOf(step);
    boolean frontFree =
        at == 0 || part.outside().get(at - 1).endDiameterMm() < step.startDiameterMm();
    boolean backFree =
        at == part.outside().size() - 1
            || part.outside().get(at + 1).startDiameterMm() < step.endDiameterMm();
    return frontFree || !backFree
        ? new Span(step.fromZMm(), step.fromZMm() + usedMm)
        : new Span(step.toZMm() - usedMm, step.toZMm());
  }

  private static void inside(
      SvgPen pen,
      Part part,
      ScrewThread thread,
      BoreStep step,
      HalfSection upper,
      ViewFrame frame) {
    double rootRMm = thread.size().majorMm() / 2;
    double crestRMm = step.largestDiameterMm() / 2;
    double usedMm = Math.min(thread.lengthMm(), step.lengthMm());
    double beginMm = place(part, step, step.fromDepthMm());
    double endMm = place(part, step, step.fromDepthMm() + usedMm);
    Span zone = new Span(Math.min(beginMm, endMm), Math.max(beginMm, endMm));
    for (Span span : upper.spansAtR(rootRMm)) {
      double fromMm = Math.max(span.fromMm(), zone.fromMm());
      double toMm = Math.min(span.toMm(), zone.toMm());
      if (toMm > fromMm) {
        pen.line("thin", frame.x(fromMm), frame.up(rootRMm), frame.x(toMm), frame.up(rootRMm));
      }
    }
    if (step.lengthMm() - usedMm > SAME_MM) {
      double endX = frame.x(endMm);
      pen.line("wide", endX, frame.up(0), endX, frame.up(rootRMm));
    } else {
      pen.line("wide", frame.x(endMm), frame.up(crestRMm), frame.x(endMm), frame.up(rootRMm));
    }
  }

  private static double place(Part part, BoreStep step, double depthMm) {
    return step.end() == End.FRONT ? depthMm : part.lengthMm() - depthMm;
  }
}
