package drumline.shape.mesh;

import java.util.HashMap;
import java.util.Map;

/** Which triangle stands on each directed edge of a mesh. */
final class MeshEdges {
  private final Map<Long, Integer> triangles = new HashMap<>();
  private boolean isSimple = true;

  MeshEdges(TriangleMesh mesh) {
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        long key = key(mesh.corner(t, k), mesh.corner(t, (k + 1) % 3));
        isSimple &= triangles.put(key, t) == null;
      }
    }
  }

  static long key(int from, int to) {
    return (long) from << 32 | to;
  }

  /** The triangle with an edge in this direction, or -1. */
  int triangle(int from, int to) {
    return triangles.getOrDefault(key(from, to), -1);
  }

  /** Whether each edge is run through once in each direction: the surface is closed. */
  boolean isClosed() {
    return isSimple
        && triangles.keySet().stream()
            .allMatch(key -> triangles.containsKey(key << 32 | key >>> 32));
  }

  /** Number of edges, each counted once. */
  int count() {
    return triangles.size() / 2;
  }
}
