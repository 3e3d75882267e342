package drumline.shape.setting;

import drumline.shape.section.HalfSection;
import drumline.shop.contour.OutsideStep;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What holds the work: nose of the drum's collet, jaws of the pick-up spindle. Usual sizes, from
 * memory; the machine maker's drawings take their place before anything is set up.
 */
public final class Holding {

  /** Way in mm from the blade's collet side to the collet's nose: common practice, from memory. */
  public static final double NOSE_GAP_MM = 2;

  private static final double WALL_MM = 4;
  private static final double NOSE_LENGTH_MM = 14;
  private static final double JAW_WALL_MM = 5;
  private static final double JAW_BEFORE_MM = 10;
  private static final double JAW_SHORT_MM = 0.5;

  private Holding() {}

  /**
   * The collet's nose round the bar: a wall of 4 mm that grows under 30° from its front.
   *
   * @param cutOffToMm collet side of the cut-off, from the front face
   */
  public static HalfSection colletNose(Bar bar, double cutOffToMm) {
    double inner = bar.acrossCornersMm() / 2;
    double from = cutOffToMm + NOSE_GAP_MM;
    double to = from + NOSE_LENGTH_MM;
    double outer = inner + WALL_MM;
    return HalfSection.of(
        List.of(
            new PointZr(from, inner),
            new PointZr(to, inner),
            new PointZr(to, outer + NOSE_LENGTH_MM * Math.tan(Math.toRadians(30))),
            new PointZr(from, outer)));
  }

  /**
   * Jaws of the pick-up spindle on the longest cylinder of the outside, as far as they can come
   * over it from the front; empty where the outside has no cylinder.
   */
  public static Optional<HalfSection> jaws(Part part) {
    return part.outside().stream()
        .filter(step -> !step.isTaper())
        .max(
            Comparator.comparingDouble(OutsideStep::lengthMm)
                .thenComparingDouble(OutsideStep::largestDiameterMm))
        .map(step -> jaws(part, step));
  }

  private static HalfSection jaws(Part part, OutsideStep gripped) {
    double inner =
        part.outside().stream()
            .filter(step -> step.fromZMm() < gripped.toZMm() - 1e-9)
            .mapToDouble(step -> step.largestDiameterMm() / 2)
            .max()
            .orElse(gripped.largestDiameterMm() / 2);
    return HalfSection.of(
        CutRegion.rectangle(
            -JAW_BEFORE_MM, gripped.toZMm() - JAW_SHORT_MM, inner, inner + JAW_WALL_MM));
  }
}
