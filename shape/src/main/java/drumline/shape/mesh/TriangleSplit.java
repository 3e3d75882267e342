package drumline.shape.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/**
 * One triangle divided along the lines where another body's surface goes through it: a planar graph
 * of its sides and the lines, whose areas are triangulated.
 */
final class TriangleSplit {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final double[] xyz;
  private final int u;
  private final int v;
  private final double sign;
  private final Map<Integer, List<Integer>> neighbours = new LinkedHashMap<>();

  /**
   * An area of the triangle.
   *
   * @param outer its bound, counter-clockwise
   * @param triangles its triangles
   */
  record Area(List<Integer> outer, List<int[]> triangles) {}

  /**
   * A triangle.
   *
   * @param corners its corners
   * @param sides points on each side from corner to corner, without these
   * @param lines pairs of points
   */
  TriangleSplit(double[] xyz, int[] corners, List<List<Integer>> sides, List<int[]> lines) {
    this.xyz = xyz;
    double[] n = normal(corners);
    int drop = Math.abs(n[0]) > Math.abs(n[1]) ? 0 : 1;
    drop = Math.abs(n[2]) > Math.abs(n[drop]) ? 2 : drop;
    this.u = (drop + 1) % 3;
    this.v = (drop + 2) % 3;
    this.sign = Math.signum(n[drop]);
    for (int k = 0; k < 3; k++) {
      int from = corners[k];
      for (int point : sides.get(k)) {
        connect(from, point);
        from = point;
      }
      connect(from, corners[(k + 1) % 3]);
    }
    lines.forEach(line -> connect(line[0], line[1]));
  }

  private double[] normal(int[] c) {
    double[] a = new double[3];
    double[] b = new double[3];
    for (int k = 0; k < 3; k++) {
      a[k] = xyz[3 * c[1] + k] - xyz[3 * c[0] + k];
      b[k] = xyz[3 * c[2] + k] - xyz[3 * c[0] + k];
    }
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private void connect(int a, int b) {
    neighbours.computeIfAbsent(a, k -> new ArrayList<>()).add(b);
    neighbours.computeIfAbsent(b, k -> new ArrayList<>()).add(a);
  }

  private double x(int p) {
    return xyz[3 * p + u];
  }

  private double y(int p) {
    return sign * xyz[3 * p + v];
  }

  /** The areas. */
  List<Area> areas() {
    List<List<Integer>> outers = new ArrayList<>();
    List<List<Integer>> inners = new ArrayList<>();
    for (List<Integer> cycle : cycles()) {
      (area(cycle) > 0 ? outers : inners).add(cycle);
    }
    List<Area> areas = new ArrayList<>();
    for (List<Integer> outer : outers) {
      List<List<Integer>> holes =
          inners.stream().filter(inner -> smallestAround(outers, inner) == outer).toList();
      areas.add(new Area(outer, triangles(outer, holes)));
    }
    return areas;
  }

  private @Nullable List<Integer> smallestAround(List<List<Integer>> outers, List<Integer> inner) {
    return outers.stream()
        .filter(outer -> isAround(outer, inner))
        .min(Comparator.comparingDouble(this::area))
        .orElse(null);
  }

  /** All ways around areas, each with its area to the left. */
  private List<List<Integer>> cycles() {
    Map<Long, Long> next = new HashMap<>();
    neighbours.forEach(
        (p, around) -> {
          around.sort(Comparator.comparingDouble(q -> Math.atan2(y(q) - y(p), x(q) - x(p))));
          for (int i = 0; i < around.size(); i++) {
            int before = around.get((i + around.size() - 1) % around.size());
            next.put(MeshEdges.key(around.get(i), p), MeshEdges.key(p, before));
          }
        });
    List<List<Integer>> cycles = new ArrayList<>();
    while (!next.isEmpty()) {
      List<Integer> cycle = new ArrayList<>();
      Long edge = next.keySet().iterator().next();
      while (next.containsKey(edge)) {
        cycle.add((int) (edge >> 32));
        edge = next.remove(edge);
      }
      cycles.add(cycle);
    }
    return cycles;
  }

  private double area(List<Integer> cycle) {
    double sum = 0;
    int origin = cycle.get(0);
    for (int i = 0; i < cycle.size(); i++) {
      int a = cycle.get(i);
      int b = cycle.get((i + 1) % cycle.size());
      sum += (x(a) - x(origin)) * (y(b) - y(origin)) - (x(b) - x(origin)) * (y(a) - y(origin));
    }
    return sum;
  }

  private boolean isAround(List<Integer> outer, List<Integer> inner) {
    int p = inner.get(0);
    if (outer.contains(p)) {
      return false;
    }
    boolean isIn = false;
    for (int i = 0; i < outer.size(); i++) {
      int a = outer.get(i);
      int b = outer.get((i + 1) % outer.size());
      if (y(a) > y(p) != y(b) > y(p)
          && x(p) < x(a) + (x(b) - x(a)) * (y(p) - y(a)) / (y(b) - y(a))) {
        isIn = !isIn;
      }
    }
    return isIn;
  }

  private List<int[]> triangles(List<Integer> outer, List<List<Integer>> holes) {
    if (outer.size() == 3 && holes.isEmpty()) {
      return List.of(new int[] {outer.get(0), outer.get(1), outer.get(2)});
    }
    Map<Coordinate, Integer> names = new HashMap<>();
    LinearRing shell = ring(outer, names);
    LinearRing[] inside = holes.stream().map(h -> ring(h, names)).toArray(LinearRing[]::new);
    Polygon polygon = FACTORY.createPolygon(shell, inside);
    int wanted = names.size() + 2 * holes.size() - 2;
    List<int[]> triangles = new ArrayList<>();
    Geometry found;
    try {
      found = ConstrainedDelaunayTriangulator.triangulate(polygon);
    } catch (IllegalStateException e) {
      throw new MeshFault("an area could not be divided into triangles");
    }
    for (int i = 0; i < found.getNumGeometries(); i++) {
      Coordinate[] c = found.getGeometryN(i).getCoordinates();
      int[] t = new int[3];
      for (int k = 0; k < 3; k++) {
        Integer name = names.get(c[k]);
        if (name == null) {
          throw new MeshFault("a triangle with a corner of its own");
        }
        t[k] = name;
      }
      boolean isLeft = area(List.of(t[0], t[1], t[2])) > 0;
      triangles.add(isLeft ? t : new int[] {t[0], t[2], t[1]});
    }
    if (triangles.size() != wanted) {
      throw new MeshFault(triangles.size() + " triangles in place of " + wanted);
    }
    return triangles;
  }

  private LinearRing ring(List<Integer> cycle, Map<Coordinate, Integer> names) {
    Coordinate[] ring = new Coordinate[cycle.size() + 1];
    for (int i = 0; i < cycle.size(); i++) {
      ring[i] = new Coordinate(x(cycle.get(i)), y(cycle.get(i)));
      names.put(ring[i], cycle.get(i));
    }
    ring[cycle.size()] = ring[0].copy();
    return FACTORY.createLinearRing(ring);
  }
}
