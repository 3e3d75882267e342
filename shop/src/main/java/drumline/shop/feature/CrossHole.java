package drumline.shop.feature;

import drumline.shop.thread.ThreadSize;
import drumline.shop.tolerance.Tolerance;
import org.jspecify.annotations.Nullable;

/**
 * Holes drilled from the side, square to the axis or leaning in its plane.
 *
 * @param id name of the feature
 * @param zMm where the hole's axis meets the surface, from the front face
 * @param angleDeg angle of the first hole around the axis
 * @param leanDeg angle between the hole's axis and a plane square to the piece's axis, 0 = square
 * @param diameterMm diameter; for a tapped hole that of the tapping drill
 * @param depthMm drilled depth from the surface along the hole's axis
 * @param count holes equally spaced around
 * @param reach whether it goes through to the far side
 * @param tolerance tolerance of the diameter
 * @param thread thread tapped in it, or null
 */
public record CrossHole(
    String id,
    double zMm,
    double angleDeg,
    double leanDeg,
    double diameterMm,
    double depthMm,
    int count,
    Reach reach,
    Tolerance tolerance,
    @Nullable ThreadSize thread)
    implements Feature {

  /** How far a cross hole goes. */
  public enum Reach {
    /** Into one wall, or to a depth. */
    ONE_SIDE,
    /** Through both walls. */
    THROUGH
  }
}
