package drumline.shop.feature;

import drumline.shop.tolerance.Tolerance;

/**
 * A straight slot milled into the outside along the axis, or across the front or back face.
 *
 * @param id name of the feature
 * @param place where it is
 * @param zMm for an outside slot its near end from the front face; 0 for a face slot
 * @param widthMm width
 * @param depthMm depth from the surface
 * @param lengthMm length of the slot
 * @param count equally spaced slots
 * @param tolerance tolerance of the width
 */
public record MilledSlot(
    String id,
    Place place,
    double zMm,
    double widthMm,
    double depthMm,
    double lengthMm,
    int count,
    Tolerance tolerance)
    implements Feature {

  /** Where a slot is milled. */
  public enum Place {
    /** Along the outside. */
    OUTSIDE,
    /** Across the front face. */
    FRONT_FACE,
    /** Across the cut-off face. */
    BACK_FACE
  }
}
