package drumline.step.surface;

import drumline.step.space.Frame;
import drumline.step.space.Vec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Finds the plane or turned surface that a B-spline surface is, within a tolerance: its rows or its
 * columns are circles around one axis.
 */
final class NetFit {
  private static final double NEAR_MM = 0.004;
  private static final int IN_EACH = 6;
  private static final int MOST = 40;

  private final SplineNet net;
  private final double[] s;
  private final double[] t;
  private final Vec[][] grid;

  NetFit(SplineNet net) {
    this.net = net;
    this.s = net.u().parameters(IN_EACH, MOST);
    this.t = net.v().parameters(IN_EACH, MOST);
    this.grid = net.grid(s, t);
  }

  /** The surface with its side. */
  Sided fit(String entity) {
    Optional<Surface> found =
        findPlane().or(() -> findTurned(grid)).or(() -> findTurned(turned(grid)));
    if (found.isEmpty()) {
      return new Sided(new Surface.FreeForm(entity, this::nearestNormal), true);
    }
    double s0 = middle(s);
    double t0 = middle(t);
    Vec own = net.normal(s0, t0);
    return new Sided(found.get(), found.get().normal(net.at(s0, t0)).dot(own) > 0);
  }

  private static double middle(double[] p) {
    return p[p.length / 2] * 0.57 + p[p.length / 2 - 1] * 0.43;
  }

  private Vec nearestNormal(Vec point) {
    int bestI = 0;
    int bestJ = 0;
    for (int i = 0; i < s.length; i++) {
      for (int j = 0; j < t.length; j++) {
        if (grid[i][j].distance(point) < grid[bestI][bestJ].distance(point)) {
          bestI = i;
          bestJ = j;
        }
      }
    }
    return net.normal(s[bestI], t[bestJ]);
  }

  private Optional<Surface> findPlane() {
    Vec origin = grid[0][0];
    Vec normal = net.normal(middle(s), middle(t));
    boolean isFlat =
        normal.length() > 0.5
            && Arrays.stream(grid)
                .flatMap(Arrays::stream)
                .allMatch(p -> Math.abs(p.minus(origin).dot(normal)) < NEAR_MM / 2);
    return isFlat ? Optional.of(new Surface.Plane(Frame.of(origin, normal))) : Optional.empty();
  }

  private static Vec[][] turned(Vec[][] grid) {
    Vec[][] other = new Vec[grid[0].length][grid.length];
    for (int i = 0; i < grid.length; i++) {
      for (int j = 0; j < grid[0].length; j++) {
        other[j][i] = grid[i][j];
      }
    }
    return other;
  }

  /** The turned surface whose circles are the rows, if they are. */
  private static Optional<Surface> findTurned(Vec[][] rows) {
    Circle widest = null;
    for (Vec[] row : rows) {
      Optional<Circle> circle = Circle.find(row, NEAR_MM);
      if (circle.isEmpty() && !isPoint(row)) {
        return Optional.empty();
      }
      if (circle.isPresent() && (widest == null || circle.get().radius() > widest.radius())) {
        widest = circle.get();
      }
    }
    if (widest == null) {
      return Optional.empty();
    }
    Frame axis = Frame.of(widest.centre(), widest.normal());
    List<double[]> meridian = new ArrayList<>();
    for (Vec[] row : rows) {
      double[] first = MeridianFit.zr(axis, row[0]);
      for (Vec p : row) {
        double[] zr = MeridianFit.zr(axis, p);
        if (Math.hypot(zr[0] - first[0], zr[1] - first[1]) > NEAR_MM) {
          return Optional.empty();
        }
      }
      meridian.add(first);
    }
    return Optional.of(MeridianFit.fit(axis, meridian));
  }

  private static boolean isPoint(Vec[] row) {
    return Arrays.stream(row).allMatch(p -> p.distance(row[0]) < 1e-5);
  }
}
