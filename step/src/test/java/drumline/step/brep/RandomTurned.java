package drumline.step.brep;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A stepped piece by chance: its half-section, and its steps and bores as a reader should find
 * them.
 */
public final class RandomTurned {
  private final Random random;
  private final List<double[]> outside = new ArrayList<>();
  private final List<String[]> outsideRims = new ArrayList<>();
  private final List<double[]> grooves = new ArrayList<>();
  private final List<double[]> front = new ArrayList<>();
  private final List<double[]> back = new ArrayList<>();
  private boolean through;
  private double length;

  public RandomTurned(long seed) {
    this.random = new Random(seed);
    outside();
    bores();
  }

  private double between(double low, double high) {
    return Math.rint((low + random.nextDouble() * (high - low)) * 100) / 100;
  }

  /** Steps: z0, r0, z1, r1; rims "none", "C leg angle", "R radius" at both ends. */
  private void outside() {
    int count = 1 + random.nextInt(5);
    double z = 0;
    double r = between(6, 14);
    for (int i = 0; i < count; i++) {
      double long0 = between(9, 20);
      boolean isTaper = i > 0 && random.nextInt(5) == 0;
      double end = isTaper ? r + (r > 9 ? -1 : 1) * between(1, 2) : r;
      outside.add(new double[] {z, r, z + long0, end});
      outsideRims.add(new String[] {"none", "none"});
      z += long0;
      boolean keeps = isTaper || (i + 1 < count && random.nextInt(6) == 0);
      r = keeps && outside.get(i)[1] != end ? end : next(end);
    }
    length = z;
    rims();
    cutGrooves();
  }

  private double next(double r) {
    double step = between(1.5, 4);
    return r > 11 || (r > 7 && random.nextBoolean()) ? r - step : r + step;
  }

  private void rims() {
    for (int i = 0; i < outside.size(); i++) {
      double[] s = outside.get(i);
      if (s[1] == s[3]) {
        double before = i == 0 ? 0 : outside.get(i - 1)[3];
        double after = i + 1 == outside.size() ? 0 : outside.get(i + 1)[1];
        if (before != s[1]) {
          outsideRims.get(i)[0] = rim(before < s[1]);
        }
        if (after != s[3]) {
          outsideRims.get(i)[1] = rim(after < s[3]);
        }
      }
    }
  }

  private String rim(boolean isOutward) {
    int kind = random.nextInt(3);
    if (kind == 0) {
      return "none";
    }
    if (kind == 1 || !isOutward) {
      return "R " + between(0.2, 0.6);
    }
    return "C " + between(0.2, 0.7) + " " + new int[] {30, 45, 45, 60, 15}[random.nextInt(5)];
  }

  /** Grooves: z0, z1, r. */
  private void cutGrooves() {
    for (double[] s : outside) {
      if (s[1] == s[3] && random.nextInt(3) == 0) {
        double at = s[0] + between(2, 3);
        grooves.add(new double[] {at, at + between(1, 4), s[1] - between(0.4, 0.9)});
      }
    }
  }

  private double smallest() {
    double r = Double.MAX_VALUE;
    for (double[] s : outside) {
      r = Math.min(r, Math.min(s[1], s[3]));
    }
    return r - 1.2;
  }

  /** Bore steps: from, to, r; the last one blind with a cone or flat unless through. */
  private void bores() {
    int kind = random.nextInt(4);
    if (kind == 0) {
      return;
    }
    double room = length * (kind == 1 ? 0.8 : 0.45);
    steps(front, smallest(), 1 + random.nextInt(2), room);
    through = kind == 2;
    if (kind >= 2 && random.nextBoolean()) {
      double least = through ? front.get(front.size() - 1)[2] + 0.6 : 1;
      if (smallest() > least) {
        steps(back, smallest(), 1, length * 0.3);
      }
    }
    double left = length - reach(front) - reach(back);
    if (!through && left < 1) {
      back.clear();
      if (length - reach(front) < 1) {
        last(front)[3] = 0;
      }
    }
    if (through) {
      front.get(front.size() - 1)[1] = length - (back.isEmpty() ? 0 : last(back)[1]);
    }
  }

  /** How deep a bore goes with the cone of a drill. */
  private static double reach(List<double[]> bore) {
    return bore.isEmpty() ? 0 : last(bore)[1] + last(bore)[2] / Math.tan(Math.toRadians(59));
  }

  private static double[] last(List<double[]> steps) {
    return steps.get(steps.size() - 1);
  }

  private void steps(List<double[]> bore, double largest, int count, double room) {
    double from = 0;
    double r = Math.rint((largest - random.nextDouble() * 0.3) * 100) / 100;
    for (int i = 0; i < count; i++) {
      double to = from + Math.rint(room / count * (0.6 + 0.3 * random.nextDouble()) * 100) / 100;
      bore.add(new double[] {from, to, r, random.nextInt(2)});
      from = to;
      r = Math.rint((r - 0.7 - random.nextDouble()) * 100) / 100;
    }
  }

  public double length() {
    return length;
  }

  public List<double[]> outsideSteps() {
    return outside;
  }

  public List<String[]> rimsOutside() {
    return outsideRims;
  }

  public List<double[]> groovesOutside() {
    return grooves;
  }

  public List<double[]> frontBore() {
    return front;
  }

  public List<double[]> backBore() {
    return back;
  }

  public boolean isThrough() {
    return through;
  }

  /** The half-section, material to the right of the way. */
  public List<Line> section() {
    return new SectionOf(this).lines();
  }
}
