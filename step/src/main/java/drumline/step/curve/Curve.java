package drumline.step.curve;

import drumline.step.space.Vec;
import java.util.ArrayList;
import java.util.List;

/** A curve by a parameter. */
public sealed interface Curve permits Straight, Conic, Spline, Chain {

  /** The point at a parameter. */
  Vec at(double t);

  /** The parameter of a point on the curve. */
  double parameter(Vec point);

  /** Length of a period for a closed curve, 0 for an open one. */
  double period();

  /** How many steps follow a stretch well. */
  int steps(double from, double to);

  /**
   * Points from one to the other, both included.
   *
   * @param isForward whether the way goes with the parameter
   */
  default List<Vec> between(Vec from, Vec to, boolean isForward) {
    double a = parameter(from);
    double b = parameter(to);
    double period = period();
    if (period > 0) {
      boolean isSame = from.distance(to) < 1e-9 || Math.abs(b - a) < 1e-9;
      if (isSame) {
        b = a + (isForward ? period : -period);
      } else if (isForward && b < a) {
        b += period;
      } else if (!isForward && b > a) {
        b -= period;
      }
    }
    int steps = steps(a, b);
    List<Vec> points = new ArrayList<>();
    points.add(from);
    for (int i = 1; i < steps; i++) {
      points.add(at(a + (b - a) * i / steps));
    }
    points.add(to);
    return points;
  }
}
