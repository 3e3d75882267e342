package drumline.step.solid;

import drumline.step.curve.Chain;
import drumline.step.curve.Conic;
import drumline.step.curve.Curve;
import drumline.step.curve.Knots;
import drumline.step.curve.Spline;
import drumline.step.curve.Straight;
import drumline.step.exchange.Entity;
import drumline.step.exchange.Instance;
import drumline.step.space.Vec;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Reads curves.
 *
 * @param places reads points and placements
 */
record CurveReader(PlaceReader places) {
  private static final int DEEPEST = 10;

  /** The curve; empty where its kind is not known. */
  Optional<Curve> find(int id) {
    return find(id, 0);
  }

  private Optional<Curve> find(int id, int depth) {
    Instance instance = places.file().instance(id);
    Entity first = instance.first();
    if (depth > DEEPEST) {
      throw first.fault("step-curve", "curves defined by each other", "a curve of its own");
    }
    if (instance.is("B_SPLINE_CURVE_WITH_KNOTS")
        || instance.is("B_SPLINE_CURVE")
        || isSplineByName(first.name())) {
      return Optional.of(spline(instance));
    }
    return switch (first.name()) {
      case "LINE" ->
          Optional.of(new Straight(places.point(first.ref(1)), places.vector(first.ref(2))));
      case "CIRCLE" ->
          Optional.of(Conic.circle(places.frame(first.ref(1)), places.length(first, 2)));
      case "ELLIPSE" -> Optional.of(conic(Conic.Kind.ELLIPSE, first));
      case "HYPERBOLA" -> Optional.of(conic(Conic.Kind.HYPERBOLA, first));
      case "PARABOLA" -> {
        double focus = places.length(first, 2);
        yield Optional.of(new Conic(Conic.Kind.PARABOLA, places.frame(first.ref(1)), focus, focus));
      }
      case "POLYLINE" -> Optional.of(new Chain(first.refs(1).stream().map(places::point).toList()));
      case "SURFACE_CURVE",
          "SEAM_CURVE",
          "INTERSECTION_CURVE",
          "BOUNDED_SURFACE_CURVE",
          "TRIMMED_CURVE" ->
          find(first.ref(1), depth + 1);
      default -> Optional.empty();
    };
  }

  private static boolean isSplineByName(String name) {
    return name.equals("BEZIER_CURVE")
        || name.equals("UNIFORM_CURVE")
        || name.equals("QUASI_UNIFORM_CURVE");
  }

  private Conic conic(Conic.Kind kind, Entity entity) {
    return new Conic(
        kind, places.frame(entity.ref(1)), places.length(entity, 2), places.length(entity, 3));
  }

  private Spline spline(Instance instance) {
    boolean isComplex = instance.entities().size() > 1;
    Entity base = isComplex ? instance.entity("B_SPLINE_CURVE") : instance.first();
    int shift = isComplex ? 0 : 1;
    int degree = (int) base.figure(shift);
    List<Vec> points = base.refs(shift + 1).stream().map(places::point).toList();
    double[] weights = ones(points.size());
    if (isComplex && instance.is("RATIONAL_B_SPLINE_CURVE")) {
      weights = instance.entity("RATIONAL_B_SPLINE_CURVE").figures(0);
    }
    Knots knots = knots(instance, degree, points.size(), isComplex);
    if (!knots.fits(points.size()) || weights.length != points.size()) {
      throw base.fault("step-spline", "knots that do not fit the control points", "n + degree + 1");
    }
    return new Spline(knots, points, weights);
  }

  private static Knots knots(Instance instance, int degree, int pointCount, boolean isComplex) {
    Optional<Entity> given = instance.find("B_SPLINE_CURVE_WITH_KNOTS");
    if (given.isPresent()) {
      int at = isComplex ? 0 : 6;
      return Knots.of(degree, given.get().figures(at), given.get().figures(at + 1));
    }
    return named(instance.names(), degree, pointCount);
  }

  static Knots named(String names, int degree, int pointCount) {
    if (names.contains("BEZIER")) {
      return Knots.bezier(degree, pointCount);
    }
    Knots uniform = Knots.uniform(degree, pointCount);
    if (!names.contains("QUASI")) {
      return uniform;
    }
    double last = pointCount - degree;
    double[] clamped =
        Arrays.stream(uniform.values()).map(k -> Math.max(0, Math.min(last, k))).toArray();
    return new Knots(degree, clamped);
  }

  static double[] ones(int count) {
    double[] ones = new double[count];
    Arrays.fill(ones, 1);
    return ones;
  }
}
