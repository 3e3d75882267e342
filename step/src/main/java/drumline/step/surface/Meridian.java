package drumline.step.surface;

import java.util.List;

/**
 * Half-section of a turned free form as points along it; the surface's normal lies to the right of
 * the way, seen with z to the right and the radius upwards, turned by 90°.
 *
 * @param points z and radius of each point
 */
public record Meridian(List<double[]> points) {

  /** Copies the list. */
  public Meridian {
    points = List.copyOf(points);
  }

  /** The same way backwards: the normal on the other side. */
  public Meridian reversed() {
    List<double[]> back = new java.util.ArrayList<>(points);
    java.util.Collections.reverse(back);
    return new Meridian(back);
  }

  /** Normal (z, radius) at the stretch nearest to a point. */
  double[] normal(double z, double r) {
    double nearest = Double.MAX_VALUE;
    double[] normal = {0, 1};
    for (int i = 0; i + 1 < points.size(); i++) {
      double[] a = points.get(i);
      double[] b = points.get(i + 1);
      double dz = b[0] - a[0];
      double dr = b[1] - a[1];
      double length = Math.hypot(dz, dr);
      if (length > 1e-12) {
        double t = ((z - a[0]) * dz + (r - a[1]) * dr) / (length * length);
        double within = Math.max(0, Math.min(1, t));
        double off = Math.hypot(z - a[0] - within * dz, r - a[1] - within * dr);
        if (off < nearest) {
          nearest = off;
          normal = new double[] {-dr / length, dz / length};
        }
      }
    }
    return normal;
  }
}
