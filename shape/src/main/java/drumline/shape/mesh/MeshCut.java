package drumline.shape.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A body without a cutter's: triangles that meet are divided along the line where they meet, then
 * those of the body outside the cutter and those of the cutter inside the body remain.
 *
 * <p>Known limit: no corner of one body may lie exactly on the surface of the other; callers move
 * cutters by less than a micrometre until the result is closed.
 */
final class MeshCut {
  private final TriangleMesh body;
  private final TriangleMesh cutter;
  private final int bodyCount;
  private double[] xyz;
  private int pointCount;
  private final Side side;
  private final Map<List<Integer>, Integer> crossings = new HashMap<>();
  private final Map<Long, List<Integer>> onEdge = new HashMap<>();
  private final Map<Integer, List<int[]>> lines = new LinkedHashMap<>();
  private final Map<Long, int[]> facing = new HashMap<>();

  private MeshCut(TriangleMesh body, TriangleMesh cutter) {
    this.body = body;
    this.cutter = cutter;
    this.bodyCount = body.vertexCount();
    this.xyz = Arrays.copyOf(body.xyz(), body.xyz().length + cutter.xyz().length);
    System.arraycopy(cutter.xyz(), 0, xyz, body.xyz().length, cutter.xyz().length);
    this.pointCount = xyz.length / 3;
    this.side = new Side(Arrays.copyOf(xyz, xyz.length));
  }

  /**
   * The body without the cutter's.
   *
   * @throws MeshFault if they touch so closely that the result would not be closed
   */
  static TriangleMesh cut(TriangleMesh body, TriangleMesh cutter) {
    MeshCut cut = new MeshCut(body, cutter);
    cut.meet();
    if (cut.lines.isEmpty()) {
      return body;
    }
    TriangleMesh result = new MeshPieces(cut.pieces()).mesh(cut.xyz);
    if (!new MeshEdges(result).isClosed()) {
      throw new MeshFault("the result is not closed");
    }
    return result;
  }

  private int[] triangle(int t) {
    int[] c = new int[3];
    for (int k = 0; k < 3; k++) {
      c[k] =
          t < body.triangleCount()
              ? body.corner(t, k)
              : cutter.corner(t - body.triangleCount(), k) + bodyCount;
    }
    return c;
  }

  private void meet() {
    double[][] cutterBoxes = new double[cutter.triangleCount()][];
    double[] whole = {1e300, 1e300, 1e300, -1e300, -1e300, -1e300};
    for (int t = 0; t < cutterBoxes.length; t++) {
      cutterBoxes[t] = box(body.triangleCount() + t);
      for (int k = 0; k < 3; k++) {
        whole[k] = Math.min(whole[k], cutterBoxes[t][k]);
        whole[k + 3] = Math.max(whole[k + 3], cutterBoxes[t][k + 3]);
      }
    }
    for (int a = 0; a < body.triangleCount(); a++) {
      double[] own = box(a);
      if (overlap(own, whole)) {
        for (int b = 0; b < cutterBoxes.length; b++) {
          if (overlap(own, cutterBoxes[b])) {
            meet(a, body.triangleCount() + b);
          }
        }
      }
    }
  }

  private double[] box(int t) {
    double[] box = {1e300, 1e300, 1e300, -1e300, -1e300, -1e300};
    for (int c : triangle(t)) {
      for (int k = 0; k < 3; k++) {
        box[k] = Math.min(box[k], xyz[3 * c + k]);
        box[k + 3] = Math.max(box[k + 3], xyz[3 * c + k]);
      }
    }
    return box;
  }

  private static boolean overlap(double[] a, double[] b) {
    for (int k = 0; k < 3; k++) {
      if (a[k] > b[k + 3] || b[k] > a[k + 3]) {
        return false;
      }
    }
    return true;
  }

  private void meet(int a, int b) {
    List<Integer> ends = new ArrayList<>();
    through(a, b, ends);
    through(b, a, ends);
    if (ends.isEmpty()) {
      return;
    }
    if (ends.size() != 2) {
      throw new MeshFault("two triangles meet in " + ends.size() + " points");
    }
    int[] line = {ends.get(0), ends.get(1)};
    lines.computeIfAbsent(a, t -> new ArrayList<>()).add(line);
    lines.computeIfAbsent(b, t -> new ArrayList<>()).add(line);
    facing.put(lineKey(line[0], line[1]), new int[] {a, b});
  }

  private static long lineKey(int p, int q) {
    return MeshEdges.key(Math.min(p, q), Math.max(p, q));
  }

  /** Points where sides of one triangle go through the other. */
  private void through(int own, int other, List<Integer> ends) {
    int[] c = triangle(own);
    int[] t = triangle(other);
    for (int k = 0; k < 3; k++) {
      int p = Math.min(c[k], c[(k + 1) % 3]);
      int q = Math.max(c[k], c[(k + 1) % 3]);
      if (side.isThrough(p, q, t)) {
        ends.add(crossing(p, q, other, t));
      }
    }
  }

  private int crossing(int p, int q, int other, int[] t) {
    List<Integer> key = List.of(p, q, other);
    Integer known = crossings.get(key);
    if (known != null) {
      return known;
    }
    double[] at = side.crossing(p, q, t);
    if (3 * pointCount + 3 > xyz.length) {
      xyz = Arrays.copyOf(xyz, 2 * xyz.length);
    }
    System.arraycopy(at, 0, xyz, 3 * pointCount, 3);
    crossings.put(key, pointCount);
    onEdge.computeIfAbsent(MeshEdges.key(p, q), k -> new ArrayList<>()).add(pointCount);
    return pointCount++;
  }

  private List<Integer> between(int p, int q) {
    List<Integer> points =
        new ArrayList<>(
            onEdge.getOrDefault(MeshEdges.key(Math.min(p, q), Math.max(p, q)), List.of()));
    points.sort(Comparator.comparingDouble(point -> distance(Math.min(p, q), point)));
    if (p > q) {
      Collections.reverse(points);
    }
    return points;
  }

  private double distance(int a, int b) {
    double sum = 0;
    for (int k = 0; k < 3; k++) {
      double d = xyz[3 * a + k] - xyz[3 * b + k];
      sum += d * d;
    }
    return sum;
  }

  private List<MeshPieces.Piece> pieces() {
    List<MeshPieces.Piece> pieces = new ArrayList<>();
    for (int t = 0; t < body.triangleCount() + cutter.triangleCount(); t++) {
      boolean isBody = t < body.triangleCount();
      Mark mark = isBody ? body.mark(t) : cutter.mark(t - body.triangleCount());
      int[] c = triangle(t);
      List<List<Integer>> sides =
          List.of(between(c[0], c[1]), between(c[1], c[2]), between(c[2], c[0]));
      List<int[]> own = lines.getOrDefault(t, List.of());
      if (own.isEmpty() && sides.stream().allMatch(List::isEmpty)) {
        pieces.add(new MeshPieces.Piece(isBody, mark, List.of(c), 0));
      } else {
        for (TriangleSplit.Area area : new TriangleSplit(xyz, c, sides, own).areas()) {
          int where = where(t, area.outer());
          pieces.add(new MeshPieces.Piece(isBody, mark, area.triangles(), where));
        }
      }
    }
    MeshPieces.spread(pieces, facing.keySet());
    return pieces;
  }

  /** 1 where an area lies outside the other body, -1 inside, 0 where no line bounds it. */
  private int where(int t, List<Integer> outer) {
    double longest = 0;
    int where = 0;
    for (int i = 0; i < outer.size(); i++) {
      int p = outer.get(i);
      int q = outer.get((i + 1) % outer.size());
      int[] pair = facing.get(lineKey(p, q));
      if (pair != null && distance(p, q) > longest) {
        longest = distance(p, q);
        where = side(t, pair[0] == t ? pair[1] : pair[0], p, q);
      }
    }
    return where;
  }

  /** Side of another triangle on which the left of a way in a triangle lies. */
  private int side(int t, int other, int p, int q) {
    double[] n = normal(triangle(t));
    double[] m = normal(triangle(other));
    double[] d = new double[3];
    for (int k = 0; k < 3; k++) {
      d[k] = xyz[3 * q + k] - xyz[3 * p + k];
    }
    double left =
        (n[1] * d[2] - n[2] * d[1]) * m[0]
            + (n[2] * d[0] - n[0] * d[2]) * m[1]
            + (n[0] * d[1] - n[1] * d[0]) * m[2];
    return left > 0 ? 1 : -1;
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
}
