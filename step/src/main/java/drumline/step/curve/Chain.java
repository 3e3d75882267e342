package drumline.step.curve;

import drumline.step.space.Vec;
import java.util.List;

/**
 * Straight pieces from point to point; the parameter counts them.
 *
 * @param points at least two
 */
public record Chain(List<Vec> points) implements Curve {

  /** Copies the list. */
  public Chain {
    points = List.copyOf(points);
  }

  @Override
  public Vec at(double t) {
    int last = points.size() - 1;
    int i = (int) Math.max(0, Math.min(last - 1, Math.floor(t)));
    return points.get(i).plus(points.get(i + 1).minus(points.get(i)).times(t - i));
  }

  @Override
  public double parameter(Vec point) {
    double best = 0;
    double nearest = Double.MAX_VALUE;
    for (int i = 0; i + 1 < points.size(); i++) {
      Vec side = points.get(i + 1).minus(points.get(i));
      double t = point.minus(points.get(i)).dot(side) / Math.max(1e-300, side.dot(side));
      double within = Math.max(0, Math.min(1, t));
      double distance = at(i + within).distance(point);
      if (distance < nearest) {
        nearest = distance;
        best = i + within;
      }
    }
    return best;
  }

  @Override
  public double period() {
    return points.get(0).distance(points.get(points.size() - 1)) < 1e-7 ? points.size() - 1 : 0;
  }

  @Override
  public int steps(double from, double to) {
    return Math.max(1, Math.min(64, (int) Math.ceil(2 * Math.abs(to - from))));
  }
}
