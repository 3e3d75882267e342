package drumline.shape.mesh;

/** Bodies that cutters sweep: prisms along a direction, with a flat end or a point. */
final class PrismMesh {
  private final double[] origin;
  private final double[] x;
  private final double[] y;
  private final double[] along;

  /**
   * A frame.
   *
   * @param origin a point on the prism's axis, mm
   * @param x direction across, length 1
   * @param y direction across, square to it
   * @param along direction of the axis
   */
  PrismMesh(double[] origin, double[] x, double[] y, double[] along) {
    this.origin = origin;
    this.x = x;
    this.y = y;
    this.along = along;
  }

  /** A frame whose across directions are given in the piece's own axes. */
  static PrismMesh alongZ(double angleRad) {
    double c = Math.cos(angleRad);
    double s = Math.sin(angleRad);
    return new PrismMesh(
        new double[] {0, 0, 0},
        new double[] {c, s, 0},
        new double[] {-s, c, 0},
        new double[] {0, 0, 1});
  }

  /** A box by its sides in this frame. */
  TriangleMesh box(double[] xRange, double[] yRange, double[] range, Mark mark) {
    double[][] corners = {
      {xRange[0], yRange[0]}, {xRange[1], yRange[0]}, {xRange[1], yRange[1]}, {xRange[0], yRange[1]}
    };
    return prism(corners, range[0], range[1], 0, mark);
  }

  /** A round prism; its flats lie outside the circle as far as its corners lie out of it. */
  TriangleMesh round(double radiusMm, int count, double[] range, double tipMm, Mark mark) {
    double mean = radiusMm * 2 / (1 + Math.cos(Math.PI / count));
    return prism(regular(count, mean, 0.0311), range[0], range[1], tipMm, mark);
  }

  /** Corners of a regular polygon by the radius at its corners. */
  static double[][] regular(int count, double cornerMm, double turnRad) {
    double[][] corners = new double[count][];
    for (int i = 0; i < count; i++) {
      double a = turnRad + 2 * Math.PI * i / count;
      corners[i] = new double[] {cornerMm * Math.cos(a), cornerMm * Math.sin(a)};
    }
    return corners;
  }

  /**
   * A prism.
   *
   * @param corners convex polygon, counter-clockwise
   * @param from where it begins along the axis
   * @param to where it ends
   * @param tipMm length of a point before its beginning, 0 for a flat end
   */
  TriangleMesh prism(double[][] corners, double from, double to, double tipMm, Mark mark) {
    MeshBuilder builder = new MeshBuilder();
    int n = corners.length;
    int[] low = new int[n];
    int[] high = new int[n];
    for (int i = 0; i < n; i++) {
      low[i] = vertex(builder, corners[i], from);
      high[i] = vertex(builder, corners[i], to);
    }
    int lowMiddle = vertex(builder, middle(corners), from - tipMm);
    int highMiddle = vertex(builder, middle(corners), to);
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      builder.triangle(low[i], low[j], high[j], mark);
      builder.triangle(low[i], high[j], high[i], mark);
      builder.triangle(low[j], low[i], lowMiddle, mark);
      builder.triangle(high[i], high[j], highMiddle, mark);
    }
    return builder.mesh();
  }

  private static double[] middle(double[][] corners) {
    double[] sum = new double[2];
    for (double[] c : corners) {
      sum[0] += c[0] / corners.length;
      sum[1] += c[1] / corners.length;
    }
    return sum;
  }

  private int vertex(MeshBuilder builder, double[] p, double t) {
    double[] q = new double[3];
    for (int k = 0; k < 3; k++) {
      q[k] = origin[k] + x[k] * p[0] + y[k] * p[1] + along[k] * t;
    }
    return builder.vertex(q[0], q[1], q[2]);
  }
}
