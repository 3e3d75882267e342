package drumline.step.feature;

import drumline.step.solid.Face;
import drumline.step.space.Frame;
import drumline.step.space.Vec;
import drumline.step.surface.Surface;
import drumline.step.turned.Coverage;
import drumline.step.turned.Near;
import java.util.ArrayList;
import java.util.List;

/**
 * A plane along the axis, of one or several faces.
 *
 * @param angleRad angle of the direction out of its material, around the axis
 * @param off distance from the axis, negative where it faces the axis
 * @param z0 where it begins along the axis
 * @param z1 where it ends
 * @param reach greatest distance across from the foot of the axis
 * @param faces its faces
 */
record SidePlane(
    double angleRad, double off, double z0, double z1, double reach, List<Face> faces) {
  private static final double SAME_RAD = 2e-3;

  SidePlane {
    faces = List.copyOf(faces);
  }

  /** All planes along the axis; faces of one plane that overlap along the axis are one. */
  static List<SidePlane> all(Scene scene) {
    List<SidePlane> planes = new ArrayList<>();
    for (Face face : scene.faces()) {
      if (face.surface() instanceof Surface.Plane plane
          && scene.axis().isSquare(plane.frame().z(), Near.RAD)) {
        SidePlane one = of(face, scene.axis());
        int i = 0;
        while (i < planes.size()) {
          if (planes.get(i).isOne(one)) {
            one = planes.remove(i).joined(one);
          } else {
            i++;
          }
        }
        planes.add(one);
      }
    }
    return planes;
  }

  private static SidePlane of(Face face, Frame axis) {
    Vec any = face.points().findFirst().orElse(axis.origin());
    Vec out = face.outward(any);
    double[] span = face.span(axis);
    Vec across = axis.z().cross(out);
    double reach =
        face.points()
            .mapToDouble(p -> Math.abs(p.minus(axis.origin()).dot(across)))
            .max()
            .orElse(0);
    return new SidePlane(
        Coverage.angle(axis, axis.origin().plus(out)),
        any.minus(axis.origin()).dot(out),
        span[0],
        span[1],
        reach,
        List.of(face));
  }

  private boolean isOne(SidePlane o) {
    return Near.isSame(off, o.off)
        && between(angleRad, o.angleRad) < SAME_RAD
        && z0 <= o.z1 + Near.MM
        && o.z0 <= z1 + Near.MM;
  }

  private SidePlane joined(SidePlane o) {
    List<Face> both = new ArrayList<>(faces);
    both.addAll(o.faces);
    return new SidePlane(
        angleRad, off, Math.min(z0, o.z0), Math.max(z1, o.z1), Math.max(reach, o.reach), both);
  }

  boolean overlaps(SidePlane o) {
    return z0 < o.z1 - Near.MM && o.z0 < z1 - Near.MM;
  }

  boolean isSameStretch(SidePlane o) {
    return Math.abs(z0 - o.z0) < 4 * Near.MM && Math.abs(z1 - o.z1) < 4 * Near.MM;
  }

  /** Angle between two directions, 0 to π. */
  static double between(double a, double b) {
    return Math.abs(Math.IEEEremainder(a - b, 2 * Math.PI));
  }

  boolean isOpposite(SidePlane o) {
    return Math.PI - between(angleRad, o.angleRad) < SAME_RAD;
  }

  boolean isSquareTo(SidePlane o) {
    return Math.abs(Math.PI / 2 - between(angleRad, o.angleRad)) < SAME_RAD;
  }

  /** How far a point lies out of the material, along the plane's direction from the axis. */
  double along(Frame axis, Vec point) {
    Vec l = axis.local(point);
    return l.x() * Math.cos(angleRad) + l.y() * Math.sin(angleRad);
  }

  /** Whether directions are equally spaced around. */
  static boolean isEven(List<SidePlane> planes) {
    return isEven(planes.stream().mapToDouble(SidePlane::angleRad).toArray());
  }

  static boolean isEven(double[] anglesRad) {
    double[] sorted = anglesRad.clone();
    java.util.Arrays.sort(sorted);
    double step = 2 * Math.PI / sorted.length;
    for (int i = 0; i < sorted.length; i++) {
      double next = i + 1 < sorted.length ? sorted[i + 1] : sorted[0] + 2 * Math.PI;
      if (Math.abs(next - sorted[i] - step) > SAME_RAD) {
        return false;
      }
    }
    return true;
  }
}
