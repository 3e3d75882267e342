package drumline.step.surface;

import drumline.step.curve.Knots;
import drumline.step.curve.Spline;
import drumline.step.space.Vec;
import java.util.ArrayList;
import java.util.List;

/** A B-spline surface, rational or not. */
public final class SplineNet {
  private final Knots u;
  private final Knots v;
  private final List<List<Vec>> points;
  private final double[][] weights;

  /**
   * A B-spline surface, rational or not.
   *
   * @param u knots of the first direction
   * @param v knots of the second direction
   * @param points control points, rows along the first direction
   * @param weights weight of each control point
   */
  public SplineNet(Knots u, Knots v, List<List<Vec>> points, double[][] weights) {
    this.u = u;
    this.v = v;
    this.points = points;
    this.weights = weights;
  }

  /** Knots of the first direction. */
  public Knots u() {
    return u;
  }

  /** Knots of the second direction. */
  public Knots v() {
    return v;
  }

  /** Control points, rows along the first direction. */
  public List<List<Vec>> points() {
    return points;
  }

  /** Weight of each control point. */
  public double[][] weights() {
    return weights;
  }

  /** The point at two parameters. */
  public Vec at(double s, double t) {
    List<Vec> column = new ArrayList<>();
    double[] columnWeights = new double[points.size()];
    for (int i = 0; i < points.size(); i++) {
      double weight = weight(i, t);
      column.add(new Spline(v, points.get(i), weights[i]).at(t));
      columnWeights[i] = weight;
    }
    return new Spline(u, column, columnWeights).at(s);
  }

  /** Weight of a row at a parameter: its weights as a spline of their own. */
  private double weight(int row, double t) {
    List<Vec> asPoints = new ArrayList<>();
    double[] ones = new double[weights[row].length];
    for (int j = 0; j < ones.length; j++) {
      asPoints.add(new Vec(weights[row][j], 0, 0));
      ones[j] = 1;
    }
    return new Spline(v, asPoints, ones).at(t).x();
  }

  /** Points of a grid over the whole domain, rows along the first direction. */
  public Vec[][] grid(double[] s, double[] t) {
    Vec[][] grid = new Vec[s.length][t.length];
    for (int j = 0; j < t.length; j++) {
      List<Vec> column = new ArrayList<>();
      double[] columnWeights = new double[points.size()];
      for (int i = 0; i < points.size(); i++) {
        column.add(new Spline(v, points.get(i), weights[i]).at(t[j]));
        columnWeights[i] = weight(i, t[j]);
      }
      Spline along = new Spline(u, column, columnWeights);
      for (int i = 0; i < s.length; i++) {
        grid[i][j] = along.at(s[i]);
      }
    }
    return grid;
  }

  /** Normal at two parameters, the first direction crossed with the second; length 1. */
  public Vec normal(double s, double t) {
    double ds = 1e-5 * (u.to() - u.from());
    double dt = 1e-5 * (v.to() - v.from());
    double s0 = Math.max(u.from() + ds, Math.min(u.to() - ds, s));
    double t0 = Math.max(v.from() + dt, Math.min(v.to() - dt, t));
    Vec su = at(s0 + ds, t0).minus(at(s0 - ds, t0));
    Vec sv = at(s0, t0 + dt).minus(at(s0, t0 - dt));
    return su.cross(sv).unit();
  }
}
