package drumline.shape.mesh;

/** A surface of triangles; seen from outside their corners run counter-clockwise. */
public final class TriangleMesh {
  private final double[] xyz;
  private final int[] corners;
  private final Mark[] marks;

  /**
   * A surface.
   *
   * @param xyz coordinates of the vertices in mm, three for each
   * @param corners vertices of the triangles, three for each
   * @param marks what each triangle belongs to
   */
  TriangleMesh(double[] xyz, int[] corners, Mark[] marks) {
    this.xyz = xyz;
    this.corners = corners;
    this.marks = marks;
  }

  /** Coordinates of the vertices in mm, three for each; a copy. */
  public double[] xyz() {
    return xyz.clone();
  }

  /** Vertices of the triangles, three for each; a copy. */
  public int[] corners() {
    return corners.clone();
  }

  /** What a triangle belongs to. */
  public Mark mark(int triangle) {
    return marks[triangle];
  }

  /** Number of vertices. */
  public int vertexCount() {
    return xyz.length / 3;
  }

  /** Number of triangles. */
  public int triangleCount() {
    return marks.length;
  }

  /** A coordinate of a vertex; axis 0 to 2. */
  public double at(int vertex, int axis) {
    return xyz[3 * vertex + axis];
  }

  /** A corner of a triangle, 0 to 2. */
  public int corner(int triangle, int which) {
    return corners[3 * triangle + which];
  }

  /** Twice the area of a triangle as a vector out of the body, mm². */
  public double[] twiceArea(int triangle) {
    double[] a = edge(triangle, 1);
    double[] b = edge(triangle, 2);
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private double[] edge(int triangle, int to) {
    int p = corner(triangle, 0);
    int q = corner(triangle, to);
    return new double[] {at(q, 0) - at(p, 0), at(q, 1) - at(p, 1), at(q, 2) - at(p, 2)};
  }

  /**
   * Volume in mm³: a sixth of the sum of p·(a × b) over the triangles.
   *
   * <p>Source: Gauss's theorem applied to the position vector.
   */
  public double volumeMm3() {
    double sum = 0;
    for (int t = 0; t < triangleCount(); t++) {
      double[] n = twiceArea(t);
      int p = corner(t, 0);
      sum += at(p, 0) * n[0] + at(p, 1) * n[1] + at(p, 2) * n[2];
    }
    return sum / 6;
  }

  /** Area of the surface in mm². */
  public double areaMm2() {
    double sum = 0;
    for (int t = 0; t < triangleCount(); t++) {
      double[] n = twiceArea(t);
      sum += Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]) / 2;
    }
    return sum;
  }
}
