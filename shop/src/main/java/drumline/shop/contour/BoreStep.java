package drumline.shop.contour;

import drumline.shop.tolerance.Tolerance;

/**
 * One step of the inside contour, counted inwards from the end it is made from: a cylinder, or a
 * taper where the diameters differ.
 *
 * @param id name of the element, unique within the part
 * @param end the end it is made from
 * @param fromDepthMm where it begins, from that end's face
 * @param toDepthMm where it ends, greater than {@code fromDepthMm}
 * @param startDiameterMm diameter at its beginning
 * @param endDiameterMm diameter at its end
 * @param tolerance size tolerance of the diameter
 * @param roughnessRaUm arithmetic mean roughness asked, in micrometres
 * @param mouthEdge edge at {@code fromDepthMm}
 * @param bottom how it ends
 */
public record BoreStep(
    String id,
    End end,
    double fromDepthMm,
    double toDepthMm,
    double startDiameterMm,
    double endDiameterMm,
    Tolerance tolerance,
    double roughnessRaUm,
    Edge mouthEdge,
    Bottom bottom) {

  /** How a bore step ends. */
  public enum Bottom {
    /** A drill's cone may stand beyond the depth. */
    DRILL_POINT,
    /** A flat shoulder or seat, square to the axis. */
    FLAT,
    /** It opens into another bore or through the far face. */
    THROUGH
  }

  /** Length along the axis in mm. */
  public double lengthMm() {
    return toDepthMm - fromDepthMm;
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
