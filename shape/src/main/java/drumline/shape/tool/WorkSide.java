package drumline.shape.tool;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.OutsideStep;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.Operation;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.List;
import java.util.stream.Stream;

/**
 * The piece as seen from the end that a tool works on: z = 0 at that end's face, inwards positive.
 *
 * @param part the piece
 * @param bar the stock
 * @param end the end worked on
 */
record WorkSide(Part part, Bar bar, End end) {

  /** Which end faces the tool. */
  enum End {
    /** Front: the piece hangs on the bar. */
    FRONT,
    /** Cut-off side: the pick-up spindle holds the front. */
    BACK
  }

  /** Radius in mm over all of the bar's corners. */
  double stockRMm() {
    return bar.acrossCornersMm() / 2;
  }

  /** A place of the print as seen from here. */
  double zMm(double printZMm) {
    return end == End.FRONT ? printZMm : part.lengthMm() - printZMm;
  }

  /** Regions of an operation as seen from here. */
  List<CutRegion> removes(Operation operation) {
    return end == End.FRONT
        ? operation.removes()
        : operation.removes().stream()
            .map(
                region ->
                    new CutRegion(
                        region.outline().stream()
                            .map(p -> new PointZr(zMm(p.zMm()), p.rMm()))
                            .toList()))
            .toList();
  }

  /** Radius in mm of the print's outside at a place of the print. */
  double surfaceRMm(double printZMm) {
    return part.outside().stream()
        .filter(step -> step.fromZMm() <= printZMm && printZMm <= step.toZMm())
        .mapToDouble(step -> radiusMm(step, printZMm))
        .max()
        .orElse(stockRMm());
  }

  /** Whether the print stands higher just before a place, seen from the working end. */
  boolean stepsDown(PointZr place) {
    double before = place.zMm() - 0.02;
    return before > 0 && surfaceRMm(zMm(before)) > place.rMm() + 0.01;
  }

  private double radiusMm(OutsideStep step, double printZMm) {
    if (step.surface() == OutsideStep.Surface.BAR) {
      return stockRMm();
    }
    double share = (printZMm - step.fromZMm()) / step.lengthMm();
    return (step.startDiameterMm() + share * (step.endDiameterMm() - step.startDiameterMm())) / 2;
  }

  /** Smallest bore radius in mm at a depth from this end's face; 0 where there is none. */
  double boreRMm(double depthMm) {
    Stream<BoreStep> steps = Stream.concat(part.frontBore().stream(), part.backBore().stream());
    return steps
        .filter(step -> covers(step, depthMm))
        .mapToDouble(step -> step.smallestDiameterMm() / 2)
        .max()
        .orElse(bar.boreMm() / 2);
  }

  private boolean covers(BoreStep step, double depthMm) {
    boolean same = (step.end() == drumline.shop.contour.End.FRONT) == (end == End.FRONT);
    double depth = same ? depthMm : part.lengthMm() - depthMm;
    return step.fromDepthMm() <= depth && depth <= step.toDepthMm();
  }
}
