package drumline.step.brep;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The half-section of a random piece as lines and arcs. */
final class SectionOf {
  private static final double DRILL = Math.tan(Math.toRadians(59));

  private final RandomTurned piece;
  private final List<double[]> corners = new ArrayList<>();
  private final List<String> rims = new ArrayList<>();

  SectionOf(RandomTurned piece) {
    this.piece = piece;
  }

  List<Line> lines() {
    double bore = piece.frontBore().isEmpty() ? 0 : piece.frontBore().get(0)[2];
    double backBore = piece.backBore().isEmpty() ? 0 : piece.backBore().get(0)[2];
    if (piece.isThrough() && piece.backBore().isEmpty()) {
      List<double[]> front = piece.frontBore();
      backBore = front.get(front.size() - 1)[2];
    }
    corner(0, bore, "none");
    for (int i = 0; i < piece.outsideSteps().size(); i++) {
      double[] s = piece.outsideSteps().get(i);
      corner(s[0], s[1], piece.rimsOutside().get(i)[0]);
      for (double[] g : piece.groovesOutside()) {
        if (g[0] > s[0] && g[1] < s[2]) {
          corner(g[0], s[1], "none");
          corner(g[0], g[2], "none");
          corner(g[1], g[2], "none");
          corner(g[1], s[1], "none");
        }
      }
      corner(s[2], s[3], piece.rimsOutside().get(i)[1]);
    }
    corner(piece.length(), backBore, "none");
    List<double[]> inner = new ArrayList<>();
    double length = piece.length();
    for (double[] p : bore(piece.backBore(), piece.isThrough())) {
      inner.add(new double[] {length - p[0], p[1]});
    }
    List<double[]> front = bore(piece.frontBore(), piece.isThrough());
    Collections.reverse(front);
    inner.addAll(front);
    for (double[] p : inner) {
      corner(p[0], p[1], "none");
    }
    return joined();
  }

  private void corner(double z, double r, String rim) {
    int last = corners.size() - 1;
    if (last >= 0 && Math.hypot(corners.get(last)[0] - z, corners.get(last)[1] - r) < 1e-9) {
      if (rims.get(last).equals("none")) {
        rims.set(last, rim);
      }
      return;
    }
    corners.add(new double[] {z, r});
    rims.add(rim);
  }

  /** Points of a bore from its mouth inwards; a blind one ends on the axis. */
  private static List<double[]> bore(List<double[]> steps, boolean isThrough) {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      double[] s = steps.get(i);
      boolean isLast = i + 1 == steps.size();
      points.add(new double[] {s[0], s[2]});
      points.add(new double[] {s[1], s[2]});
      if (isLast && !isThrough) {
        double tip = s[3] == 1 ? s[1] + s[2] / DRILL : s[1];
        points.add(new double[] {tip, 0});
      }
    }
    return points;
  }

  private List<Line> joined() {
    List<Line> lines = new ArrayList<>();
    boolean isClosed = corners.get(0)[1] > 1e-9 && piece.isThrough();
    double[] first = corners.get(0);
    double[] last = corners.get(corners.size() - 1);
    if (isClosed && Math.hypot(first[0] - last[0], first[1] - last[1]) < 1e-9) {
      corners.remove(corners.size() - 1);
    }
    int count = corners.size();
    double[] reached = corners.get(0);
    for (int i = 1; i < count; i++) {
      double[] before = corners.get(i - 1);
      double[] at = corners.get(i);
      String[] rim = rims.get(i).split(" ", -1);
      if ((i + 1 == count && !isClosed) || rim[0].equals("none")) {
        add(lines, reached, at);
        reached = at;
      } else {
        double[] after = corners.get((i + 1) % count);
        reached = rim(lines, reached, new double[][] {before, at, after}, rim);
      }
    }
    if (isClosed) {
      add(lines, reached, corners.get(0));
    }
    return lines;
  }

  private static double[] rim(List<Line> lines, double[] reached, double[][] p, String[] rim) {
    double size = Double.parseDouble(rim[1]);
    boolean shoulderFirst = p[0][0] == p[1][0];
    double along = size;
    double across = size;
    if (rim[0].equals("C")) {
      across = size * Math.tan(Math.toRadians(Double.parseDouble(rim[2])));
    }
    double[] a = towards(p[1], p[0], shoulderFirst ? across : along);
    double[] b = towards(p[1], p[2], shoulderFirst ? along : across);
    add(lines, reached, a);
    if (rim[0].equals("C")) {
      add(lines, a, b);
    } else {
      double cross =
          (p[1][0] - p[0][0]) * (p[2][1] - p[1][1]) - (p[1][1] - p[0][1]) * (p[2][0] - p[1][0]);
      List<Double> arc =
          List.of(a[0] + b[0] - p[1][0], a[1] + b[1] - p[1][1], cross > 0 ? 1.0 : -1.0);
      lines.add(new Line(a[0], a[1], b[0], b[1], arc));
    }
    return b;
  }

  private static double[] towards(double[] from, double[] to, double distance) {
    double length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return new double[] {
      from[0] + (to[0] - from[0]) * distance / length,
      from[1] + (to[1] - from[1]) * distance / length
    };
  }

  private static void add(List<Line> lines, double[] a, double[] b) {
    boolean isOnAxis = a[1] < 1e-9 && b[1] < 1e-9;
    if (!isOnAxis && Math.hypot(a[0] - b[0], a[1] - b[1]) > 1e-9) {
      lines.add(Line.straight(a[0], a[1], b[0], b[1]));
    }
  }
}
