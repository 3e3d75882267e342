package drumline.shop.feature;

import drumline.shop.contour.End;
import drumline.shop.tolerance.Tolerance;

/**
 * A groove or undercut, turned.
 *
 * @param id name of the feature
 * @param place surface it is cut into
 * @param end end it is reached from; for an outside groove always {@link End#FRONT}
 * @param atMm near edge: z from the front face outside; depth from the end's face inside; inner
 *     diameter for a face groove
 * @param widthMm width of the groove
 * @param bottomDiameterMm diameter at the bottom of an outside or inside groove; for a face groove
 *     its depth in mm is {@code depthMm}
 * @param depthMm depth of a face groove along the axis; 0 for the others
 * @param tolerance tolerance of the bottom diameter (of the depth for a face groove)
 * @param roughnessRaUm arithmetic mean roughness asked, in micrometres
 */
public record Groove(
    String id,
    Place place,
    End end,
    double atMm,
    double widthMm,
    double bottomDiameterMm,
    double depthMm,
    Tolerance tolerance,
    double roughnessRaUm)
    implements Feature {

  /** Surface that a groove is cut into. */
  public enum Place {
    /** Outside surface, cut from the side. */
    OUTSIDE,
    /** Bore wall, cut from inside. */
    INSIDE,
    /** End face, cut along the axis. */
    FACE
  }
}
