package drumline.shop.contour;

import drumline.shop.tolerance.Tolerance;

/**
 * One step of the outside contour, front to back: a cylinder, or a taper where the diameters
 * differ.
 *
 * @param id name of the element, unique within the part
 * @param fromZMm where it begins, from the front face
 * @param toZMm where it ends, greater than {@code fromZMm}
 * @param startDiameterMm diameter at its beginning; with the surface of a hexagon or square bar the
 *     bar's size across flats
 * @param endDiameterMm diameter at its end
 * @param surface whether it is turned or the bar's own surface
 * @param tolerance size tolerance of the diameter
 * @param roughnessRaUm arithmetic mean roughness asked, in micrometres
 * @param frontEdge edge at {@code fromZMm}
 * @param backEdge edge at {@code toZMm}; only the last step's is usual, made before cut-off or from
 *     the back
 */
public record OutsideStep(
    String id,
    double fromZMm,
    double toZMm,
    double startDiameterMm,
    double endDiameterMm,
    Surface surface,
    Tolerance tolerance,
    double roughnessRaUm,
    Edge frontEdge,
    Edge backEdge) {

  /** Who makes the surface. */
  public enum Surface {
    /** Cut on the machine. */
    TURNED,
    /** The bar's own drawn or ground surface. */
    BAR
  }

  /** Length along the axis in mm. */
  public double lengthMm() {
    return toZMm - fromZMm;
  }

  /** Greater of the two diameters in mm. */
  public double largestDiameterMm() {
    return Math.max(startDiameterMm, endDiameterMm);
  }

  /** Lesser of the two diameters in mm. */
  public double smallestDiameterMm() {
    return Math.min(startDiameterMm, endDiameterMm);
  }

  /** Whether the two diameters differ. */
  public boolean isTaper() {
    return startDiameterMm != endDiameterMm;
  }
}
