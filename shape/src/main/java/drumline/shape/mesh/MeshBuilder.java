package drumline.shape.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Collects vertices and triangles. */
final class MeshBuilder {
  private double[] xyz = new double[3072];
  private int coordinateCount;
  private int[] corners = new int[3072];
  private int cornerCount;
  private final List<Mark> marks = new ArrayList<>();

  int vertex(double x, double y, double z) {
    if (coordinateCount + 3 > xyz.length) {
      xyz = Arrays.copyOf(xyz, 2 * xyz.length);
    }
    xyz[coordinateCount++] = x;
    xyz[coordinateCount++] = y;
    xyz[coordinateCount++] = z;
    return coordinateCount / 3 - 1;
  }

  void triangle(int a, int b, int c, Mark mark) {
    if (cornerCount + 3 > corners.length) {
      corners = Arrays.copyOf(corners, 2 * corners.length);
    }
    corners[cornerCount++] = a;
    corners[cornerCount++] = b;
    corners[cornerCount++] = c;
    marks.add(mark);
  }

  TriangleMesh mesh() {
    return new TriangleMesh(
        Arrays.copyOf(xyz, coordinateCount),
        Arrays.copyOf(corners, cornerCount),
        marks.toArray(new Mark[0]));
  }
}
