package drumline.step.curve;

import java.util.Arrays;

/** A knot vector and its basis. */
public final class Knots {
  private final int degree;
  private final double[] values;

  /**
   * A knot vector and its basis.
   *
   * @param degree degree, 1 or more
   * @param values knots with their repetitions, rising
   */
  public Knots(int degree, double[] values) {
    this.degree = degree;
    this.values = values;
  }

  /** Degree, 1 or more. */
  public int degree() {
    return degree;
  }

  /** Knots with their repetitions, rising. */
  public double[] values() {
    return values;
  }

  /** From distinct knots and how often each is repeated. */
  public static Knots of(int degree, double[] multiplicities, double[] knots) {
    int total = (int) Arrays.stream(multiplicities).sum();
    double[] values = new double[total];
    int at = 0;
    for (int i = 0; i < knots.length; i++) {
      for (int k = 0; k < multiplicities[i] && at < total; k++) {
        values[at++] = knots[i];
      }
    }
    return new Knots(degree, values);
  }

  /** Knots without repetition at equal distances, of a curve that is said to be uniform. */
  public static Knots uniform(int degree, int pointCount) {
    double[] values = new double[pointCount + degree + 1];
    for (int i = 0; i < values.length; i++) {
      values[i] = i - degree;
    }
    return new Knots(degree, values);
  }

  /** Knots of Bézier pieces one after another. */
  public static Knots bezier(int degree, int pointCount) {
    double[] values = new double[pointCount + degree + 1];
    for (int i = 0; i < values.length; i++) {
      values[i] = Math.max(0, Math.min((i - 1) / degree, (pointCount - 1) / degree));
    }
    return new Knots(degree, values);
  }

  /** Whether the vector fits a number of control points. */
  public boolean fits(int pointCount) {
    return degree >= 1 && pointCount > degree && values.length == pointCount + degree + 1;
  }

  /** Beginning of the domain. */
  public double from() {
    return values[degree];
  }

  /** End of the domain. */
  public double to() {
    return values[values.length - 1 - degree];
  }

  /** Parameters that step through the domain, several in each stretch between knots. */
  public double[] parameters(int inEach, int most) {
    double[] distinct = Arrays.stream(values, degree, values.length - degree).distinct().toArray();
    int spans = Math.max(1, distinct.length - 1);
    int each = Math.max(2, Math.min(inEach, most / spans));
    double[] found = new double[spans * each + 1];
    for (int i = 0; i < spans; i++) {
      for (int k = 0; k < each; k++) {
        found[i * each + k] = distinct[i] + (distinct[i + 1] - distinct[i]) * k / each;
      }
    }
    found[spans * each] = distinct[distinct.length - 1];
    return found;
  }

  /** Index of the stretch that a parameter lies in. */
  int span(double t) {
    int low = degree;
    int high = values.length - 2 - degree;
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (values[middle] <= t) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  /** Values of the degree + 1 basis functions of a stretch. */
  double[] basis(int span, double t) {
    double[] basis = new double[degree + 1];
    double[] left = new double[degree + 1];
    double[] right = new double[degree + 1];
    basis[0] = 1;
    for (int j = 1; j <= degree; j++) {
      left[j] = t - values[span + 1 - j];
      right[j] = values[span + j] - t;
      double saved = 0;
      for (int r = 0; r < j; r++) {
        double width = right[r + 1] + left[j - r];
        double part = width == 0 ? 0 : basis[r] / width;
        basis[r] = saved + right[r + 1] * part;
        saved = left[j - r] * part;
      }
      basis[j] = saved;
    }
    return basis;
  }
}
