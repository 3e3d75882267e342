package drumline.shop.feature;

import drumline.shop.contour.End;
import drumline.shop.thread.ThreadSize;
import drumline.shop.tolerance.Tolerance;
import org.jspecify.annotations.Nullable;

/**
 * Holes along the axis but off centre, equally spaced on a pitch circle.
 *
 * @param id name of the feature
 * @param end the face they are in
 * @param pitchCircleMm diameter of the pitch circle
 * @param diameterMm diameter; for tapped holes that of the tapping drill
 * @param depthMm depth from the face to the full diameter
 * @param count number of holes
 * @param tolerance tolerance of the diameter
 * @param thread thread tapped in them, or null
 */
public record FaceHoles(
    String id,
    End end,
    double pitchCircleMm,
    double diameterMm,
    double depthMm,
    int count,
    Tolerance tolerance,
    @Nullable ThreadSize thread)
    implements Feature {}
