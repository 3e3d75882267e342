package drumline.shop.operation;

import java.util.List;

/**
 * What an operation takes away, as a closed polygon in the half-section.
 *
 * @param outline corners in order, without repeating the first
 */
public record CutRegion(List<PointZr> outline) {

  /** Copies the list. */
  public CutRegion {
    outline = List.copyOf(outline);
  }

  /**
   * A point of the half-section.
   *
   * @param zMm from the front face, positive toward the collet
   * @param rMm distance from the axis
   */
  public record PointZr(double zMm, double rMm) {}

  /** Rectangle between two z and two radii. */
  public static CutRegion rectangle(
      double fromZMm, double toZMm, double innerRMm, double outerRMm) {
    return new CutRegion(
        List.of(
            new PointZr(fromZMm, innerRMm),
            new PointZr(toZMm, innerRMm),
            new PointZr(toZMm, outerRMm),
            new PointZr(fromZMm, outerRMm)));
  }
}
