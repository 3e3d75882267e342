package drumline.route.turning;

import drumline.route.draft.RouteDraft;
import drumline.route.feature.EdgeLine;
import drumline.route.feature.Surface;
import drumline.route.feature.ThreadChoice;
import drumline.route.feature.TurnedPart;
import drumline.shop.contour.OutsideStep;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * The outside as a turning tool meets it: surfaces with the radius they are turned to, and which of
 * them lie behind a larger diameter.
 */
public final class OutsideProfile {
  private final RouteDraft draft;
  private final List<Face> faces = new ArrayList<>();

  /**
   * One step with what turning makes of it.
   *
   * @param step the step as turning leaves it
   * @param turnedRadiusMm largest radius after finishing: the blank's for a rolled thread
   * @param finished whether a finishing cut follows
   * @param behind whether a larger diameter stands in front of it
   * @param blank whether it is the blank of a rolled thread
   */
  record Face(
      OutsideStep step, double turnedRadiusMm, boolean finished, boolean behind, boolean blank) {

    /** Radius that roughing leaves. */
    double roughRadiusMm(double stockMm) {
      return turnedRadiusMm + (finished ? stockMm : 0);
    }
  }

  /** For a draft. */
  public OutsideProfile(RouteDraft draft) {
    this.draft = draft;
    double largest = 0;
    for (OutsideStep step : TurnedPart.of(draft).outside()) {
      boolean blank = ThreadChoice.rolledOn(draft, step.id()).isPresent();
      double radius = step.largestDiameterMm() / 2;
      boolean turned = step.surface() == OutsideStep.Surface.TURNED;
      boolean finished = turned && (blank || needsFinish(step));
      faces.add(new Face(step, radius, finished, turned && radius < largest - 1e-6, blank));
      largest = Math.max(largest, radius);
    }
  }

  private boolean needsFinish(OutsideStep step) {
    return draft.uses("finish-by-grade") && Surface.of(draft, step).needsFinishTurn();
  }

  /** All steps, front to back. */
  List<Face> faces() {
    return faces;
  }

  /** Steps that a turning tool reaches from the front. */
  List<Face> open() {
    return faces.stream()
        .filter(f -> !f.behind() && f.step().surface() == OutsideStep.Surface.TURNED)
        .toList();
  }

  /** Runs of neighbouring steps that lie behind a larger diameter. */
  List<List<Face>> valleys() {
    List<List<Face>> runs = new ArrayList<>();
    List<Face> run = new ArrayList<>();
    for (Face face : faces) {
      if (face.behind()) {
        run.add(face);
      } else if (!run.isEmpty()) {
        runs.add(List.copyOf(run));
        run.clear();
      }
    }
    if (!run.isEmpty()) {
      runs.add(List.copyOf(run));
    }
    return runs;
  }

  /** Largest radius of the bar: half the size across corners. */
  double barRadiusMm() {
    return draft.inquiry().bar().acrossCornersMm() / 2;
  }

  /** Length along the contour of a step with its front edge, in mm. */
  static double contourMm(OutsideStep step) {
    double radial = Math.abs(step.endDiameterMm() - step.startDiameterMm()) / 2;
    double edge = EdgeLine.hasForm(step.frontEdge()) ? 0.5 * step.frontEdge().sizeMm() : 0;
    return Math.hypot(step.lengthMm(), radial) + edge;
  }

  /** The piece. */
  Part part() {
    return draft.inquiry().part();
  }
}
