package drumline.shape.mesh;

import java.util.Arrays;

/**
 * On which side of a plane through three points a fourth lies. The points are taken in the order of
 * their numbers, so that all questions about the same four points get the same answer.
 */
final class Side {
  private final double[] xyz;

  /**
   * The points.
   *
   * @param xyz coordinates, three for each point
   */
  Side(double[] xyz) {
    this.xyz = xyz;
  }

  /** 1 or -1; the volume's sign of the four points, turned with their order. */
  int of(int a, int b, int c, int d) {
    int[] p = {a, b, c, d};
    boolean isOdd = false;
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3 - i; j++) {
        if (p[j] > p[j + 1]) {
          int swap = p[j];
          p[j] = p[j + 1];
          p[j + 1] = swap;
          isOdd = !isOdd;
        }
      }
    }
    boolean isPositive = volume(p[0], p[1], p[2], p[3]) > 0;
    return isPositive == isOdd ? -1 : 1;
  }

  /** Six times the volume of four points. */
  double volume(int a, int b, int c, int d) {
    double[] u = minus(b, a);
    double[] v = minus(c, a);
    double[] w = minus(d, a);
    return u[0] * (v[1] * w[2] - v[2] * w[1])
        + u[1] * (v[2] * w[0] - v[0] * w[2])
        + u[2] * (v[0] * w[1] - v[1] * w[0]);
  }

  private double[] minus(int a, int b) {
    return new double[] {
      xyz[3 * a] - xyz[3 * b], xyz[3 * a + 1] - xyz[3 * b + 1], xyz[3 * a + 2] - xyz[3 * b + 2]
    };
  }

  /** Whether a segment goes through a triangle. */
  boolean isThrough(int p, int q, int[] t) {
    if (of(t[0], t[1], t[2], p) == of(t[0], t[1], t[2], q)) {
      return false;
    }
    int first = of(p, q, t[0], t[1]);
    return first == of(p, q, t[1], t[2]) && first == of(p, q, t[2], t[0]);
  }

  /** Where a segment goes through a triangle's plane. */
  double[] crossing(int p, int q, int[] t) {
    double a = volume(t[0], t[1], t[2], p);
    double b = volume(t[0], t[1], t[2], q);
    double share = a == b ? 0.5 : a / (a - b);
    double[] at = Arrays.copyOfRange(xyz, 3 * p, 3 * p + 3);
    for (int k = 0; k < 3; k++) {
      at[k] += share * (xyz[3 * q + k] - xyz[3 * p + k]);
    }
    return at;
  }
}
