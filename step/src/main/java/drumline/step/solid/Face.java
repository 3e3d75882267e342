package drumline.step.solid;

import drumline.step.space.Frame;
import drumline.step.space.Vec;
import drumline.step.surface.Surface;
import java.util.List;
import java.util.stream.Stream;

/**
 * A face of a solid.
 *
 * @param id number of its instance
 * @param surface its surface
 * @param isSame whether the surface's normal points out of the material
 * @param loops its bounds
 */
public record Face(int id, Surface surface, boolean isSame, List<Loop> loops) {

  /** Copies the list. */
  public Face {
    loops = List.copyOf(loops);
  }

  /** Direction out of the material at a point of the face. */
  public Vec outward(Vec point) {
    Vec normal = surface.normal(point);
    return isSame ? normal : normal.times(-1);
  }

  /** All points of its bounds. */
  public Stream<Vec> points() {
    return loops.stream().flatMap(loop -> loop.points().stream());
  }

  /** Least and greatest place along an axis: two values. */
  public double[] span(Frame axis) {
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (Vec p : (Iterable<Vec>) points()::iterator) {
      low = Math.min(low, axis.along(p));
      high = Math.max(high, axis.along(p));
    }
    return new double[] {low, high};
  }

  /** How often the bounds go around an axis in all; not 0 where the face closes over it. */
  public int turns(Frame axis) {
    double sum = 0;
    for (Loop loop : loops) {
      List<Vec> points = loop.points();
      for (int i = 0; i < points.size(); i++) {
        Vec a = axis.local(points.get(i));
        Vec b = axis.local(points.get((i + 1) % points.size()));
        if (Math.hypot(a.x(), a.y()) > 1e-6 && Math.hypot(b.x(), b.y()) > 1e-6) {
          sum += Math.atan2(a.x() * b.y() - a.y() * b.x(), a.x() * b.x() + a.y() * b.y());
        }
      }
    }
    return (int) Math.rint(sum / (2 * Math.PI));
  }
}
