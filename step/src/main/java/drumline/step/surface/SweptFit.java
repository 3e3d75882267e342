package drumline.step.surface;

import drumline.step.curve.Conic;
import drumline.step.curve.Curve;
import drumline.step.curve.Spline;
import drumline.step.curve.Straight;
import drumline.step.space.Frame;
import drumline.step.space.Vec;
import java.util.ArrayList;
import java.util.List;

/** The simplest surface that a curve sweeps, turned around an axis or pushed along a line. */
public final class SweptFit {
  private static final int STEPS = 24;
  private static final double ANGLE_RAD = 1e-4;

  private SweptFit() {}

  /** A curve as a B-spline surface. */
  public static Sided net(SplineNet net, String entity) {
    return new NetFit(net).fit(entity);
  }

  /**
   * A curve turned around an axis.
   *
   * @param seen points of the face's bounds, which say how much of the curve is used
   */
  public static Sided turned(Curve curve, Frame axis, List<Vec> seen) {
    double[] range = range(curve, axis, seen);
    List<double[]> meridian = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      Vec p = curve.at(range[0] + (range[1] - range[0]) * i / STEPS);
      meridian.add(MeridianFit.zr(axis, p));
    }
    Surface surface =
        curve instanceof Conic conic && conic.isCircle()
            ? circleTurned(conic, axis, meridian)
            : MeridianFit.fit(axis, meridian);
    double t = range[0] + 0.43 * (range[1] - range[0]);
    double step = 1e-4 * (range[1] - range[0]);
    Vec at = curve.at(t);
    if (axis.radius(at) < 1e-6) {
      at = curve.at(t + 10 * step);
    }
    Vec along = curve.at(t + step).minus(curve.at(t - step));
    Vec around = axis.z().cross(axis.radial(at));
    return new Sided(surface, surface.normal(at).dot(around.cross(along)) > 0);
  }

  private static Surface circleTurned(Conic circle, Frame axis, List<double[]> meridian) {
    Vec centre = axis.local(circle.frame().origin());
    double off = Math.hypot(centre.x(), centre.y());
    boolean holdsAxis = axis.isSquare(circle.frame().z(), ANGLE_RAD);
    Vec out = axis.radial(circle.frame().origin());
    boolean isInPlane =
        holdsAxis && (off < 1e-6 || Math.abs(out.dot(circle.frame().z())) < ANGLE_RAD);
    if (!isInPlane) {
      return MeridianFit.fit(axis, meridian);
    }
    Frame at = Frame.of(axis.world(new Vec(0, 0, centre.z())), axis.z());
    return off < MeridianFit.NEAR_MM
        ? new Surface.Sphere(at, circle.a())
        : new Surface.Torus(at, off, circle.a());
  }

  private static double[] range(Curve curve, Frame axis, List<Vec> seen) {
    if (curve instanceof Straight straight) {
      double slope = straight.direction().dot(axis.z());
      double low = Double.MAX_VALUE;
      double high = -Double.MAX_VALUE;
      for (Vec p : seen) {
        double t =
            Math.abs(slope) > 1e-3
                ? (axis.along(p) - axis.along(straight.origin())) / slope
                : radialParameter(straight, axis, p);
        low = Math.min(low, t);
        high = Math.max(high, t);
      }
      return high > low ? new double[] {low, high} : new double[] {0, 1};
    }
    if (curve instanceof Spline spline) {
      return new double[] {spline.knots().from(), spline.knots().to()};
    }
    double period = curve.period();
    return new double[] {0, period > 0 ? period : 1};
  }

  /** Parameter of the point of a line square to the axis that is as far out as another point. */
  private static double radialParameter(Straight line, Frame axis, Vec p) {
    Vec foot = line.at(line.parameter(axis.world(new Vec(0, 0, axis.along(p)))));
    double nearest = axis.radius(foot);
    double far = axis.radius(p);
    double half = Math.sqrt(Math.max(0, far * far - nearest * nearest));
    double middle = line.parameter(foot);
    double own = axis.radius(line.at(middle + half + 1));
    boolean isAhead =
        Math.abs(line.parameter(line.origin()) - middle - half)
            <= Math.abs(line.parameter(line.origin()) - middle + half);
    return own >= far && isAhead ? middle + half : middle - half;
  }

  /** A curve pushed along a line. */
  public static Sided pushed(Curve curve, Vec along, String entity) {
    if (curve instanceof Straight straight) {
      Vec normal = straight.direction().cross(along).unit();
      return new Sided(new Surface.Plane(Frame.of(straight.origin(), normal)), true);
    }
    List<Vec> points = points(curve);
    Vec[] flat = points.stream().map(p -> p.minus(along.times(p.dot(along)))).toArray(Vec[]::new);
    var circle = Circle.find(flat, MeridianFit.NEAR_MM);
    Vec tangent = points.get(1).minus(points.get(0));
    if (circle.isPresent()) {
      Frame frame = Frame.of(circle.get().centre(), along);
      Surface surface = new Surface.Cylinder(frame, circle.get().radius());
      Vec middle = points.get(0).plus(points.get(1)).times(0.5);
      return new Sided(surface, surface.normal(middle).dot(tangent.cross(along)) > 0);
    }
    Vec normal = flat[flat.length - 1].minus(flat[0]).cross(along).unit();
    boolean isFlat =
        normal.length() > 0.5
            && points.stream()
                .allMatch(p -> Math.abs(p.minus(points.get(0)).dot(normal)) < MeridianFit.NEAR_MM);
    if (isFlat) {
      Surface plane = new Surface.Plane(Frame.of(points.get(0), normal));
      return new Sided(plane, normal.dot(tangent.cross(along)) > 0);
    }
    return new Sided(new Surface.FreeForm(entity, p -> nearest(points, along, p)), true);
  }

  private static Vec nearest(List<Vec> points, Vec along, Vec p) {
    int best = 0;
    double least = Double.MAX_VALUE;
    for (int i = 0; i + 1 < points.size(); i++) {
      Vec d = p.minus(points.get(i));
      double off = d.minus(along.times(d.dot(along))).length();
      if (off < least) {
        least = off;
        best = i;
      }
    }
    return points.get(best + 1).minus(points.get(best)).cross(along).unit();
  }

  private static List<Vec> points(Curve curve) {
    double from = 0;
    double to = curve.period() > 0 ? curve.period() : 1;
    if (curve instanceof Spline spline) {
      from = spline.knots().from();
      to = spline.knots().to();
    }
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      points.add(curve.at(from + (to - from) * i / STEPS));
    }
    return points;
  }
}
