package drumline.step.solid;

import drumline.step.curve.Curve;
import drumline.step.curve.Knots;
import drumline.step.exchange.Entity;
import drumline.step.exchange.Instance;
import drumline.step.space.Frame;
import drumline.step.space.Vec;
import drumline.step.surface.Sided;
import drumline.step.surface.SplineNet;
import drumline.step.surface.Surface;
import drumline.step.surface.SweptFit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads surfaces, each in its simplest form.
 *
 * @param places reads points and placements
 * @param curves reads curves
 */
record SurfaceReader(PlaceReader places, CurveReader curves) {
  private static final int DEEPEST = 10;

  /**
   * The surface.
   *
   * @param seen points of the face's bounds
   */
  Sided read(int id, List<Vec> seen) {
    return read(id, seen, 0);
  }

  private Sided read(int id, List<Vec> seen, int depth) {
    Instance instance = places.file().instance(id);
    Entity first = instance.first();
    if (depth > DEEPEST) {
      throw first.fault("step-surface", "surfaces defined by each other", "a surface of its own");
    }
    if (instance.names().contains("B_SPLINE_SURFACE")
        || instance.names().matches(".*(BEZIER|UNIFORM)_SURFACE.*")) {
      return SweptFit.net(net(instance), "B_SPLINE_SURFACE");
    }
    return switch (first.name()) {
      case "PLANE" -> same(new Surface.Plane(frame(first)));
      case "CYLINDRICAL_SURFACE" ->
          same(new Surface.Cylinder(frame(first), places.length(first, 2)));
      case "CONICAL_SURFACE" ->
          same(new Surface.Cone(frame(first), places.length(first, 2), places.angleRad(first, 3)));
      case "SPHERICAL_SURFACE" -> same(new Surface.Sphere(frame(first), places.length(first, 2)));
      case "TOROIDAL_SURFACE", "DEGENERATE_TOROIDAL_SURFACE" ->
          same(new Surface.Torus(frame(first), places.length(first, 2), places.length(first, 3)));
      case "SURFACE_OF_REVOLUTION" -> revolution(first, seen);
      case "SURFACE_OF_LINEAR_EXTRUSION" -> extrusion(first);
      case "RECTANGULAR_TRIMMED_SURFACE", "CURVE_BOUNDED_SURFACE" ->
          read(first.ref(1), seen, depth + 1);
      default -> unknown(first);
    };
  }

  private Frame frame(Entity entity) {
    return places.frame(entity.ref(1));
  }

  private static Sided same(Surface surface) {
    return new Sided(surface, true);
  }

  private static Sided unknown(Entity entity) {
    return same(new Surface.FreeForm(entity.name(), p -> Vec.ZERO));
  }

  private Sided revolution(Entity entity, List<Vec> seen) {
    Optional<Curve> curve = curves.find(entity.ref(1));
    return curve.isEmpty()
        ? unknown(entity)
        : SweptFit.turned(curve.get(), places.frame(entity.ref(2)), seen);
  }

  private Sided extrusion(Entity entity) {
    Optional<Curve> curve = curves.find(entity.ref(1));
    return curve.isEmpty()
        ? unknown(entity)
        : SweptFit.pushed(curve.get(), places.vector(entity.ref(2)), entity.name());
  }

  private SplineNet net(Instance instance) {
    boolean isComplex = instance.entities().size() > 1;
    Entity base = isComplex ? instance.entity("B_SPLINE_SURFACE") : instance.first();
    int shift = isComplex ? 0 : 1;
    int degreeU = (int) base.figure(shift);
    int degreeV = (int) base.figure(shift + 1);
    List<List<Vec>> points = new ArrayList<>();
    for (List<Integer> row : base.refGrid(shift + 2)) {
      points.add(row.stream().map(places::point).toList());
    }
    int rows = points.size();
    int columns = points.get(0).size();
    double[][] weights = new double[rows][];
    for (int i = 0; i < rows; i++) {
      weights[i] = CurveReader.ones(columns);
    }
    if (instance.is("RATIONAL_B_SPLINE_SURFACE") && isComplex) {
      weights = instance.entity("RATIONAL_B_SPLINE_SURFACE").grid(0);
    }
    Optional<Entity> given = instance.find("B_SPLINE_SURFACE_WITH_KNOTS");
    int at = isComplex ? 0 : 8;
    Knots u =
        given
            .map(g -> Knots.of(degreeU, g.figures(at), g.figures(at + 2)))
            .orElseGet(() -> CurveReader.named(instance.names(), degreeU, rows));
    Knots v =
        given
            .map(g -> Knots.of(degreeV, g.figures(at + 1), g.figures(at + 3)))
            .orElseGet(() -> CurveReader.named(instance.names(), degreeV, columns));
    boolean isWhole = points.stream().allMatch(row -> row.size() == columns);
    if (!isWhole || !u.fits(rows) || !v.fits(columns) || weights.length != rows) {
      throw base.fault("step-spline", "knots that do not fit the control points", "n + degree + 1");
    }
    return new SplineNet(u, v, points, weights);
  }
}
