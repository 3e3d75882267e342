package drumline.step.curve;

import drumline.step.space.Vec;
import java.util.List;

/** A B-spline curve, rational or not. */
public final class Spline implements Curve {
  private final Knots knots;
  private final List<Vec> points;
  private final double[] weights;

  /**
   * A B-spline curve, rational or not.
   *
   * @param knots its knots
   * @param points control points
   * @param weights weight of each control point
   */
  public Spline(Knots knots, List<Vec> points, double[] weights) {
    this.knots = knots;
    this.points = List.copyOf(points);
    this.weights = weights;
  }

  /** Its knots. */
  public Knots knots() {
    return knots;
  }

  /** Control points. */
  public List<Vec> points() {
    return points;
  }

  /** Weight of each control point. */
  public double[] weights() {
    return weights;
  }

  @Override
  public Vec at(double t) {
    double inside = Math.max(knots.from(), Math.min(knots.to(), t));
    int span = knots.span(inside);
    double[] basis = knots.basis(span, inside);
    Vec sum = Vec.ZERO;
    double weight = 0;
    for (int i = 0; i < basis.length; i++) {
      int index = span - knots.degree() + i;
      double part = basis[i] * weights[index];
      sum = sum.plus(points.get(index).times(part));
      weight += part;
    }
    return sum.times(1 / weight);
  }

  @Override
  public double parameter(Vec point) {
    double[] tries = knots.parameters(16, 400);
    int best = 0;
    for (int i = 1; i < tries.length; i++) {
      if (at(tries[i]).distance(point) < at(tries[best]).distance(point)) {
        best = i;
      }
    }
    double low = tries[Math.max(0, best - 1)];
    double high = tries[Math.min(tries.length - 1, best + 1)];
    for (int k = 0; k < 60; k++) {
      double a = low + (high - low) / 3;
      double b = high - (high - low) / 3;
      if (at(a).distance(point) < at(b).distance(point)) {
        high = b;
      } else {
        low = a;
      }
    }
    return (low + high) / 2;
  }

  @Override
  public double period() {
    boolean isClosed = at(knots.from()).distance(at(knots.to())) < 1e-6;
    return isClosed ? knots.to() - knots.from() : 0;
  }

  /** Over the seam of a closed curve the parameter begins anew. */
  @Override
  public List<Vec> between(Vec from, Vec to, boolean isForward) {
    if (period() > 0 && at(knots.from()).distance(from) < 1e-6) {
      boolean isWhole = from.distance(to) < 1e-6;
      double end = isWhole ? knots.to() : parameter(to);
      return isForward
          ? sampled(knots.from(), end, from, to)
          : sampled(knots.to(), isWhole ? knots.from() : end, from, to);
    }
    double a = parameter(from);
    double b =
        period() > 0 && at(knots.from()).distance(to) < 1e-6
            ? isForward ? knots.to() : knots.from()
            : parameter(to);
    return sampled(a, b, from, to);
  }

  private List<Vec> sampled(double a, double b, Vec from, Vec to) {
    int steps = steps(a, b);
    List<Vec> found = new java.util.ArrayList<>();
    found.add(from);
    for (int i = 1; i < steps; i++) {
      found.add(at(a + (b - a) * i / steps));
    }
    found.add(to);
    return found;
  }

  @Override
  public int steps(double from, double to) {
    double share = Math.abs(to - from) / Math.max(1e-300, knots.to() - knots.from());
    int all = Math.min(256, Math.max(24, 8 * points.size()));
    return Math.max(8, (int) Math.ceil(share * all));
  }
}
