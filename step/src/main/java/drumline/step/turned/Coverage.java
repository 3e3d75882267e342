package drumline.step.turned;

import drumline.step.solid.Face;
import drumline.step.space.Frame;
import drumline.step.space.Vec;
import java.util.Arrays;
import java.util.List;

/** How far faces reach around an axis. */
public final class Coverage {

  private Coverage() {}

  /** Angle that a face covers, in radians, up to a full turn. */
  public static double rad(Face face, Frame axis) {
    return rad(List.of(face), axis);
  }

  /** Angle that faces cover together: a full turn without the widest gap between their bounds. */
  public static double rad(List<Face> faces, Frame axis) {
    double[] angles =
        faces.stream()
            .flatMap(Face::points)
            .filter(p -> axis.radius(p) > 1e-6)
            .mapToDouble(p -> angle(axis, p))
            .sorted()
            .toArray();
    if (angles.length == 0) {
      return 2 * Math.PI;
    }
    double gap = angles[0] + 2 * Math.PI - angles[angles.length - 1];
    for (int i = 1; i < angles.length; i++) {
      gap = Math.max(gap, angles[i] - angles[i - 1]);
    }
    boolean isClosed = gap < Math.toRadians(20) && Arrays.stream(angles).distinct().count() > 8;
    return isClosed ? 2 * Math.PI : 2 * Math.PI - gap;
  }

  /** Angle of a point around an axis in radians, from −π to π. */
  public static double angle(Frame axis, Vec point) {
    Vec l = axis.local(point);
    return Math.atan2(l.y(), l.x());
  }
}
