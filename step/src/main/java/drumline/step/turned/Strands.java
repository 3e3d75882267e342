package drumline.step.turned;

import drumline.step.solid.Face;
import drumline.step.solid.Loop;
import drumline.step.space.Frame;
import drumline.step.space.Vec;
import drumline.step.surface.Surface;
import java.util.ArrayList;
import java.util.List;

/** Reads faces that are turned around an axis as strands of the half-section. */
public final class Strands {
  private static final double STRAIGHT_MM = 0.003;

  private final Frame axis;

  /** A reader for one axis, with z = 0 at its origin. */
  public Strands(Frame axis) {
    this.axis = axis;
  }

  /** Least and greatest place of a face along an axis, its closed tips and poles counted. */
  static double[] reach(Face face, Frame axis) {
    double[] span = face.span(axis);
    for (Strand strand : new Strands(axis).read(face)) {
      span[0] = Math.min(span[0], strand.z0());
      span[1] = Math.max(span[1], strand.z1());
    }
    return span;
  }

  /** The strands of a face; none where it is not turned around the axis. */
  public List<Strand> read(Face face) {
    Surface surface = face.surface();
    if (surface instanceof Surface.Plane plane && axis.isParallel(plane.frame().z(), Near.RAD)) {
      return List.of(plane(face));
    }
    if (surface instanceof Surface.Cylinder c && axis.isCoaxial(c.frame(), Near.RAD, Near.MM)) {
      double[] span = face.span(axis);
      return List.of(straight(face, span[0], c.radiusMm(), span[1], c.radiusMm()));
    }
    if (surface instanceof Surface.Cone c && axis.isCoaxial(c.frame(), Near.RAD, Near.MM)) {
      return List.of(cone(face, c));
    }
    if (surface instanceof Surface.Sphere s && axis.radius(s.frame().origin()) <= Near.MM) {
      return arcs(face, axis.along(s.frame().origin()), 0, s.radiusMm());
    }
    if (surface instanceof Surface.Torus t && axis.isCoaxial(t.frame(), Near.RAD, Near.MM)) {
      return arcs(face, axis.along(t.frame().origin()), t.radiusMm(), t.tubeMm());
    }
    if (surface instanceof Surface.Lathe l && axis.isCoaxial(l.frame(), Near.RAD, Near.MM)) {
      return lathe(face, l);
    }
    return List.of();
  }

  private Strand plane(Face face) {
    double z = face.points().mapToDouble(axis::along).average().orElse(0);
    double high = face.points().mapToDouble(axis::radius).max().orElse(0);
    double low = face.points().mapToDouble(axis::radius).min().orElse(0);
    double inner = face.turns(axis) != 0 ? 0 : low;
    double out = face.outward(axis.origin()).dot(axis.z());
    return new Strand(face, z, inner, z, high, null, 0, out);
  }

  private Strand cone(Face face, Surface.Cone cone) {
    double sense = axis.z().dot(cone.frame().z()) > 0 ? 1 : -1;
    double tip = axis.along(cone.frame().origin()) + sense * cone.apexMm();
    double[] span = face.span(axis);
    if (face.turns(axis) != 0) {
      span = new double[] {Math.min(span[0], tip), Math.max(span[1], tip)};
    }
    double slope = Math.abs(Math.tan(cone.halfAngleRad()));
    return straight(
        face, span[0], slope * Math.abs(span[0] - tip), span[1], slope * Math.abs(span[1] - tip));
  }

  private Strand straight(Face face, double z0, double r0, double z1, double r1) {
    double[] out = out(face, (z0 + z1) / 2, (r0 + r1) / 2);
    return new Strand(face, z0, r0, z1, r1, null, out[0], out[1]);
  }

  /** Radial and axial part of the direction out of the material at a place in the half-section. */
  private double[] out(Face face, double z, double r) {
    Vec point = axis.world(new Vec(r, 0, z));
    Vec normal = face.outward(point);
    return new double[] {normal.dot(axis.x()), normal.dot(axis.z())};
  }

  private List<Strand> arcs(Face face, double z, double r, double radius) {
    double[] range = ArcRange.of(face, axis, new double[] {z, r, radius});
    List<Strand> strands = new ArrayList<>();
    double from = range[0];
    while (from < range[1] - 1e-6) {
      double next = (Math.floor(from / Math.PI + 1e-9) + 1) * Math.PI;
      double to = Math.min(range[1], next);
      double za = z + radius * Math.cos(from);
      double ra = r + radius * Math.sin(from);
      double zb = z + radius * Math.cos(to);
      double rb = r + radius * Math.sin(to);
      double middle = (from + to) / 2;
      double[] out = out(face, z + radius * Math.cos(middle), r + radius * Math.sin(middle));
      Strand.Arc arc = new Strand.Arc(z, r, radius, Math.sin(middle) > 0);
      strands.add(
          za < zb
              ? new Strand(face, za, Math.max(0, ra), zb, Math.max(0, rb), arc, out[0], out[1])
              : new Strand(face, zb, Math.max(0, rb), za, Math.max(0, ra), arc, out[0], out[1]));
      from = to;
    }
    return strands;
  }

  private List<Strand> lathe(Face face, Surface.Lathe lathe) {
    double sense = axis.z().dot(lathe.frame().z()) > 0 ? 1 : -1;
    double origin = axis.along(lathe.frame().origin());
    double[] span = face.span(axis);
    List<double[]> points = new ArrayList<>();
    for (double[] p : lathe.meridian().points()) {
      double z = origin + sense * p[0];
      if (z >= span[0] - Near.MM && z <= span[1] + Near.MM) {
        points.add(new double[] {z, p[1]});
      }
    }
    List<Strand> strands = new ArrayList<>();
    int from = 0;
    while (from + 1 < points.size()) {
      int to = from + 1;
      while (to + 1 < points.size() && isStraight(points, from, to + 1)) {
        to++;
      }
      double[] a = points.get(from);
      double[] b = points.get(to);
      strands.add(
          a[0] < b[0]
              ? straight(face, a[0], a[1], b[0], b[1])
              : straight(face, b[0], b[1], a[0], a[1]));
      from = to;
    }
    return strands;
  }

  private static boolean isStraight(List<double[]> points, int from, int to) {
    double[] a = points.get(from);
    double[] b = points.get(to);
    double length = Math.max(1e-12, Math.hypot(b[0] - a[0], b[1] - a[1]));
    for (int i = from + 1; i < to; i++) {
      double[] p = points.get(i);
      double off = (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
      if (Math.abs(off) / length > 8 * STRAIGHT_MM) {
        return false;
      }
    }
    return true;
  }

  /** Which part of a circle in the half-section a face uses. */
  private static final class ArcRange {
    private ArcRange() {}

    /** From and to, in radians against z, counter-clockwise. */
    static double[] of(Face face, Frame axis, double[] circle) {
      double[] angles =
          face.points()
              .mapToDouble(p -> Math.atan2(axis.radius(p) - circle[1], axis.along(p) - circle[0]))
              .sorted()
              .toArray();
      if (circle[1] < Near.MM) {
        return ball(face, axis, circle, angles);
      }
      double[] clusters = clusters(angles);
      if (clusters.length == 0) {
        return new double[] {0, 2 * Math.PI};
      }
      if (clusters.length == 2) {
        double a = clusters[0];
        double b = clusters[1];
        return isRising(face, axis, circle, a)
            ? new double[] {a, b}
            : new double[] {b, a + 2 * Math.PI};
      }
      return withoutWidestGap(clusters);
    }

    private static double[] ball(Face face, Frame axis, double[] circle, double[] angles) {
      double low = angles.length == 0 ? 0 : Math.max(0, angles[0]);
      double high = angles.length == 0 ? Math.PI : angles[angles.length - 1];
      boolean isTipOnly = face.loops().stream().allMatch(loop -> loop.points().size() == 1);
      if (isTipOnly) {
        return new double[] {0, Math.PI};
      }
      if (face.turns(axis) != 0) {
        return isRising(face, axis, circle, high)
            ? new double[] {low, Math.PI}
            : new double[] {0, high};
      }
      return new double[] {low, high};
    }

    private static double[] clusters(double[] angles) {
      List<Double> found = new ArrayList<>();
      for (double angle : angles) {
        if (found.isEmpty() || angle - found.get(found.size() - 1) > 1e-3) {
          found.add(angle);
        }
      }
      int last = found.size() - 1;
      if (last > 0 && found.get(0) + 2 * Math.PI - found.get(last) < 1e-3) {
        found.remove(last);
      }
      return found.stream().mapToDouble(d -> d).toArray();
    }

    private static double[] withoutWidestGap(double[] sorted) {
      int at = 0;
      double gap = sorted[0] + 2 * Math.PI - sorted[sorted.length - 1];
      for (int i = 1; i < sorted.length; i++) {
        if (sorted[i] - sorted[i - 1] > gap) {
          gap = sorted[i] - sorted[i - 1];
          at = i;
        }
      }
      double from = sorted[at];
      double to = sorted[(at + sorted.length - 1) % sorted.length];
      boolean isWhole = gap < 0.3 && sorted.length > 24;
      return isWhole
          ? new double[] {from, from + 2 * Math.PI}
          : new double[] {from, to < from ? to + 2 * Math.PI : to};
    }

    /** Whether the face lies on the side of growing angles of a bound. */
    private static boolean isRising(Face face, Frame axis, double[] circle, double angle) {
      double sum = 0;
      for (Loop loop : face.loops()) {
        List<Vec> points = loop.points();
        for (int i = 0; i < points.size(); i++) {
          Vec a = points.get(i);
          Vec b = points.get((i + 1) % points.size());
          double at = Math.atan2(axis.radius(a) - circle[1], axis.along(a) - circle[0]);
          double off = Math.abs(Math.IEEEremainder(at - angle, 2 * Math.PI));
          if (off < 2e-3 && b.distance(a) > 1e-9) {
            Vec inside = face.outward(a).cross(b.minus(a));
            Vec rising = axis.z().times(-Math.sin(at)).plus(axis.radial(a).times(Math.cos(at)));
            sum += inside.dot(rising);
          }
        }
      }
      return sum > 0;
    }
  }

  /** All strands of faces, in the order of the faces. */
  public List<Strand> readAll(List<Face> faces) {
    return faces.stream().flatMap(face -> read(face).stream()).toList();
  }
}
