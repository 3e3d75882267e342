package drumline.step.surface;

import drumline.step.space.Vec;
import java.util.Arrays;
import java.util.Optional;

/**
 * A circle in space.
 *
 * @param centre its middle
 * @param normal its axis, length 1
 * @param radius its radius
 */
record Circle(Vec centre, Vec normal, double radius) {

  /** The circle on which all points lie, if there is one. */
  static Optional<Circle> find(Vec[] points, double nearMm) {
    Vec a = points[0];
    Vec b = points[points.length / 3];
    Vec c = points[2 * points.length / 3];
    Vec ab = b.minus(a);
    Vec ac = c.minus(a);
    Vec normal = ab.cross(ac);
    if (normal.length() < 1e-6 * Math.max(ab.dot(ab), ac.dot(ac)) || normal.length() == 0) {
      return Optional.empty();
    }
    Vec toCentre =
        normal
            .cross(ab)
            .times(ac.dot(ac))
            .plus(ac.cross(normal).times(ab.dot(ab)))
            .times(1 / (2 * normal.dot(normal)));
    Vec centre = a.plus(toCentre);
    double radius = toCentre.length();
    Vec axis = normal.unit();
    boolean all =
        Arrays.stream(points)
            .allMatch(
                p ->
                    Math.abs(p.minus(centre).dot(axis)) < nearMm
                        && Math.abs(p.distance(centre) - radius) < nearMm);
    return all ? Optional.of(new Circle(centre, axis, radius)) : Optional.empty();
  }
}
