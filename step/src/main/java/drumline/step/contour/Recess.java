package drumline.step.contour;

/**
 * A groove.
 *
 * @param place surface it is cut into: outside, inside or face
 * @param z0 where it begins, from the front face
 * @param z1 where it ends
 * @param r radius at its bottom; inner radius of a groove in a face
 * @param outerR outer radius of a groove in a face, else 0
 */
public record Recess(Place place, double z0, double z1, double r, double outerR) {

  /** Surfaces. */
  public enum Place {
    /** Outside. */
    OUTSIDE,
    /** Bore wall. */
    INSIDE,
    /** End face. */
    FACE
  }
}
