package drumline.shop.part;

import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.Flats;
import drumline.shop.feature.Groove;
import drumline.shop.feature.Knurl;
import drumline.shop.feature.ScrewThread;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where a pick-up spindle's collet grips a piece: on the longest plain cylinder that it can pass
 * over from the front, threads, knurls, grooves and polygons not counted; where none is long
 * enough, on the longest cylinder whatever it carries. The larger one of two that are as long.
 * Source: common practice; the least length is from memory.
 *
 * @param step the cylinder
 * @param plainMm length of it that nothing is cut into, in mm
 * @param isPlain whether that is long enough to grip
 */
public record PickUpSeat(OutsideStep step, double plainMm, boolean isPlain) {
  /** Shortest grip, in mm. */
  private static final double LEAST_MM = 5;

  /** Shortest grip over the diameter. */
  private static final double LEAST_RATIO = 0.25;

  private static final double ROUNDING_MM = 1e-6;

  /** The seat on a piece; empty where its outside is all taper. */
  public static Optional<PickUpSeat> find(Part part) {
    List<OutsideStep> straight = part.outside().stream().filter(step -> !step.isTaper()).toList();
    Optional<PickUpSeat> plain =
        straight.stream()
            .filter(step -> canPass(part, step))
            .map(step -> new PickUpSeat(step, uncutMm(part, step), true))
            .filter(PickUpSeat::isLongEnough)
            .max(
                Comparator.comparingDouble(PickUpSeat::plainMm)
                    .thenComparingDouble(seat -> seat.step().largestDiameterMm()));
    return plain.isPresent()
        ? plain
        : part.findLongestCylinder().map(step -> new PickUpSeat(step, uncutMm(part, step), false));
  }

  private boolean isLongEnough() {
    return plainMm >= Math.max(LEAST_MM, LEAST_RATIO * step.largestDiameterMm()) - ROUNDING_MM;
  }

  /** Whether nothing in front of the step is larger. */
  private static boolean canPass(Part part, OutsideStep step) {
    return part.outside().stream()
        .filter(other -> other.toZMm() <= step.fromZMm() + ROUNDING_MM)
        .allMatch(other -> other.largestDiameterMm() <= step.largestDiameterMm() + ROUNDING_MM);
  }

  private static double uncutMm(Part part, OutsideStep step) {
    double taken =
        part.features(ScrewThread.class).stream()
            .filter(thread -> thread.onElement().equals(step.id()))
            .mapToDouble(ScrewThread::lengthMm)
            .sum();
    for (Knurl knurl : part.features(Knurl.class)) {
      taken += overlapMm(step, knurl.fromZMm(), knurl.toZMm());
    }
    for (Groove groove : part.features(Groove.class)) {
      if (groove.place() == Groove.Place.OUTSIDE) {
        taken += overlapMm(step, groove.atMm(), groove.atMm() + groove.widthMm());
      }
    }
    for (Flats flats : part.features(Flats.class)) {
      if (flats.count() > 2) {
        taken += overlapMm(step, flats.fromZMm(), flats.toZMm());
      }
    }
    return Math.max(0, step.lengthMm() - taken);
  }

  private static double overlapMm(OutsideStep step, double fromZMm, double toZMm) {
    return Math.max(0, Math.min(step.toZMm(), toZMm) - Math.max(step.fromZMm(), fromZMm));
  }
}
