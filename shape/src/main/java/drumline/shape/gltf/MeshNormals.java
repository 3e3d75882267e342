package drumline.shape.gltf;

import drumline.shape.mesh.TriangleMesh;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Normals of a mesh's corners: around each corner those of triangles that turn by less than the
 * crease angle are taken together by their area, so that round surfaces look round and edges sharp.
 */
final class MeshNormals {
  private static final double CREASE_COS = Math.cos(Math.toRadians(28));

  private final TriangleMesh mesh;
  private final double[][] areas;
  private final Map<Integer, List<Integer>> around = new HashMap<>();

  MeshNormals(TriangleMesh mesh) {
    this.mesh = mesh;
    this.areas = new double[mesh.triangleCount()][];
    for (int t = 0; t < areas.length; t++) {
      areas[t] = mesh.twiceArea(t);
      for (int k = 0; k < 3; k++) {
        around.computeIfAbsent(mesh.corner(t, k), v -> new ArrayList<>()).add(t);
      }
    }
  }

  /** Normal of a triangle's corner, length 1. */
  double[] at(int triangle, int which) {
    double[] own = areas[triangle];
    double[] sum = new double[3];
    for (int other : around.getOrDefault(mesh.corner(triangle, which), List.of())) {
      double[] n = areas[other];
      boolean isSmooth =
          mesh.mark(other) == mesh.mark(triangle)
              && dot(own, n) >= CREASE_COS * Math.sqrt(dot(own, own) * dot(n, n));
      for (int k = 0; k < 3 && isSmooth; k++) {
        sum[k] += n[k];
      }
    }
    return unit(dot(sum, sum) > 0 ? sum : own);
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double[] unit(double[] v) {
    double length = Math.sqrt(dot(v, v));
    return length > 0
        ? new double[] {v[0] / length, v[1] / length, v[2] / length}
        : new double[] {0, 0, 1};
  }
}
