package drumline.shop.feature;

/**
 * A knurled band on an outside step.
 *
 * @param id name of the feature
 * @param onElement id of the outside step
 * @param fromZMm where it begins, from the front face
 * @param toZMm where it ends
 * @param pitchMm distance of the teeth around the piece
 * @param form axial ridges or diamonds
 */
public record Knurl(
    String id, String onElement, double fromZMm, double toZMm, double pitchMm, Form form)
    implements Feature {

  /** Pattern of a knurl, DIN 82. */
  public enum Form {
    /** Ridges parallel to the axis. */
    STRAIGHT,
    /** Crossed ridges. */
    DIAMOND
  }
}
