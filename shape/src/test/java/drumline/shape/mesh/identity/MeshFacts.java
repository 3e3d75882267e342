package drumline.shape.mesh.identity;

import drumline.shape.mesh.TriangleMesh;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** What a closed surface must be, counted without the code that made it. */
final class MeshFacts {

  private MeshFacts() {}

  /** Edges that are not run through exactly once in each direction. */
  static long openEdges(TriangleMesh mesh) {
    Map<String, Integer> balance = new HashMap<>();
    Map<String, Integer> uses = new HashMap<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int k = 0; k < 3; k++) {
        int a = mesh.corner(t, k);
        int b = mesh.corner(t, (k + 1) % 3);
        String key = Math.min(a, b) + "/" + Math.max(a, b);
        balance.merge(key, a < b ? 1 : -1, Integer::sum);
        uses.merge(key, 1, Integer::sum);
      }
    }
    return balance.entrySet().stream()
        .filter(e -> e.getValue() != 0 || uses.get(e.getKey()) != 2)
        .count();
  }

  /** Holes through a body in one piece: V − E + F = 2 − 2·holes (Euler and Poincaré). */
  static int holes(TriangleMesh mesh) {
    Set<Integer> vertices = new HashSet<>();
    for (int corner : mesh.corners()) {
      vertices.add(corner);
    }
    int edges = mesh.triangleCount() * 3 / 2;
    int euler = vertices.size() - edges + mesh.triangleCount();
    return (2 - euler) / 2;
  }
}
