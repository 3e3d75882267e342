package drumline.shop.feature;

import drumline.shop.tolerance.Tolerance;

/**
 * Flats or a polygon on the outside: one flat, two across, square, hexagon and so on.
 *
 * @param id name of the feature
 * @param fromZMm where they begin, from the front face
 * @param toZMm where they end
 * @param acrossMm size across flats for an even count; twice the distance from the axis for an odd
 *     one
 * @param count number of flats, equally spaced
 * @param method how they are to be made, or {@link Method#AUTO}
 * @param tolerance tolerance of the size across flats
 */
public record Flats(
    String id,
    double fromZMm,
    double toZMm,
    double acrossMm,
    int count,
    Method method,
    Tolerance tolerance)
    implements Feature {

  /** Ways to make flats. */
  public enum Method {
    /** The route's rules decide. */
    AUTO,
    /** Milled from the side, spindle held, cutter fed across. */
    SIDE,
    /** Milled from the end face's side by an end mill along the axis. */
    FACE,
    /** Turned with a cutter geared to the spindle; flats come out slightly crowned. */
    POLYGON
  }
}
