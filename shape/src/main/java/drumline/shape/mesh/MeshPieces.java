package drumline.shape.mesh;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Pieces of two bodies that were divided along the lines where they meet.
 *
 * @param pieces the pieces, each wholly inside or outside the other body
 */
record MeshPieces(List<Piece> pieces) {

  /** Part of one body's surface. */
  static final class Piece {
    private final boolean isBody;
    private final Mark mark;
    private final List<int[]> triangles;
    private int where;

    /**
     * A piece.
     *
     * @param where 1 outside the other body, -1 inside, 0 not known yet
     */
    Piece(boolean isBody, Mark mark, List<int[]> triangles, int where) {
      this.isBody = isBody;
      this.mark = mark;
      this.triangles = triangles;
      this.where = where;
    }
  }

  /** Gives pieces of which nothing is known what their neighbours are, except across the lines. */
  static void spread(List<Piece> pieces, Set<Long> lines) {
    Map<Long, Piece> byEdge = new HashMap<>();
    Deque<Piece> known = new ArrayDeque<>();
    for (Piece piece : pieces) {
      for (int[] t : piece.triangles) {
        for (int k = 0; k < 3; k++) {
          byEdge.put(MeshEdges.key(t[k], t[(k + 1) % 3]), piece);
        }
      }
      if (piece.where != 0) {
        known.add(piece);
      }
    }
    while (!known.isEmpty()) {
      Piece piece = known.remove();
      for (int[] t : piece.triangles) {
        for (int k = 0; k < 3; k++) {
          int p = t[k];
          int q = t[(k + 1) % 3];
          Piece other = byEdge.get(MeshEdges.key(q, p));
          boolean isLine = lines.contains(MeshEdges.key(Math.min(p, q), Math.max(p, q)));
          if (!isLine && other != null && other.where == 0) {
            other.where = piece.where;
            known.add(other);
          }
        }
      }
    }
  }

  /** What is left of the body: its pieces outside the cutter, the cutter's inside, turned round. */
  TriangleMesh mesh(double[] xyz) {
    MeshBuilder builder = new MeshBuilder();
    Map<Integer, Integer> names = new HashMap<>();
    for (Piece piece : pieces) {
      boolean isKept = piece.isBody ? piece.where >= 0 : piece.where < 0;
      if (isKept) {
        for (int[] t : piece.triangles) {
          int a = name(t[0], names, builder, xyz);
          int b = name(t[1], names, builder, xyz);
          int c = name(t[2], names, builder, xyz);
          builder.triangle(a, piece.isBody ? b : c, piece.isBody ? c : b, piece.mark);
        }
      }
    }
    return builder.mesh();
  }

  private static int name(int p, Map<Integer, Integer> names, MeshBuilder builder, double[] xyz) {
    Integer known = names.get(p);
    if (known == null) {
      known = builder.vertex(xyz[3 * p], xyz[3 * p + 1], xyz[3 * p + 2]);
      names.put(p, known);
    }
    return known;
  }
}
