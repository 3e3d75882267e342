package drumline.step.surface;

import drumline.step.space.Frame;
import drumline.step.space.Vec;
import drumline.step.surface.Surface.Cone;
import drumline.step.surface.Surface.Cylinder;
import drumline.step.surface.Surface.Lathe;
import drumline.step.surface.Surface.Plane;
import drumline.step.surface.Surface.Sphere;
import drumline.step.surface.Surface.Torus;
import java.util.List;

/** The simplest turned surface whose half-section runs through given points. */
final class MeridianFit {
  /** Points this near to a line or arc lie on it, in mm. */
  static final double NEAR_MM = 0.002;

  private MeridianFit() {}

  /**
   * The surface.
   *
   * @param axis its axis
   * @param points z and radius along the half-section, two or more
   */
  static Surface fit(Frame axis, List<double[]> points) {
    double[] a = points.get(0);
    double[] b = farthest(points, a);
    if (isStraight(points, a, b)) {
      return straight(axis, a, b);
    }
    double[] middle = middle(points, a, b);
    double[] circle = circle(a, middle, b);
    boolean isArc =
        points.stream()
            .allMatch(
                p ->
                    Math.abs(Math.hypot(p[0] - circle[0], p[1] - circle[1]) - circle[2]) < NEAR_MM);
    if (!isArc || circle[1] < -NEAR_MM) {
      return new Lathe(axis, new Meridian(points));
    }
    Frame centre =
        new Frame(axis.origin().plus(axis.z().times(circle[0])), axis.x(), axis.y(), axis.z());
    return circle[1] < NEAR_MM
        ? new Sphere(centre, circle[2])
        : new Torus(centre, circle[1], circle[2]);
  }

  static Surface straight(Frame axis, double[] a, double[] b) {
    Frame at = new Frame(axis.origin().plus(axis.z().times(a[0])), axis.x(), axis.y(), axis.z());
    double dz = b[0] - a[0];
    double dr = b[1] - a[1];
    if (Math.abs(dz) < 1e-4 * Math.abs(dr)) {
      return new Plane(at);
    }
    if (Math.abs(dr) < 1e-4 * Math.abs(dz)) {
      return new Cylinder(at, (a[1] + b[1]) / 2);
    }
    return new Cone(at, a[1], Math.atan2(dr * Math.signum(dz), Math.abs(dz)));
  }

  private static double[] farthest(List<double[]> points, double[] from) {
    double[] far = points.get(points.size() - 1);
    for (double[] p : points) {
      if (distance(p, from) > distance(far, from)) {
        far = p;
      }
    }
    return far;
  }

  private static boolean isStraight(List<double[]> points, double[] a, double[] b) {
    return points.stream().allMatch(p -> Math.abs(off(p, a, b)) < NEAR_MM);
  }

  private static double[] middle(List<double[]> points, double[] a, double[] b) {
    double[] best = points.get(0);
    for (double[] p : points) {
      if (Math.abs(off(p, a, b)) > Math.abs(off(best, a, b))) {
        best = p;
      }
    }
    return best;
  }

  private static double off(double[] p, double[] a, double[] b) {
    double length = Math.max(1e-12, distance(a, b));
    return ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / length;
  }

  private static double distance(double[] a, double[] b) {
    return Math.hypot(a[0] - b[0], a[1] - b[1]);
  }

  /** Middle (z, r) and radius of the circle through three points. */
  static double[] circle(double[] a, double[] b, double[] c) {
    double bx = b[0] - a[0];
    double by = b[1] - a[1];
    double cx = c[0] - a[0];
    double cy = c[1] - a[1];
    double twice = 2 * (bx * cy - by * cx);
    double b2 = bx * bx + by * by;
    double c2 = cx * cx + cy * cy;
    double x = (cy * b2 - by * c2) / twice;
    double y = (bx * c2 - cx * b2) / twice;
    return new double[] {a[0] + x, a[1] + y, Math.hypot(x, y)};
  }

  /** z and radius of a point. */
  static double[] zr(Frame axis, Vec point) {
    return new double[] {axis.along(point), axis.radius(point)};
  }
}
