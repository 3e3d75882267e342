package drumline.shop.feature;

/**
 * Engraved text.
 *
 * @param id name of the feature
 * @param text what is engraved
 * @param place where
 * @param atMm middle of the text line: z from the front face outside, radius on a face
 * @param heightMm height of capitals
 * @param depthMm depth of the line
 */
public record Engraving(
    String id, String text, Place place, double atMm, double heightMm, double depthMm)
    implements Feature {

  /** Where text stands. */
  public enum Place {
    /** Around the outside. */
    OUTSIDE,
    /** On the front face. */
    FRONT_FACE,
    /** On the cut-off face. */
    BACK_FACE
  }
}
