package drumline.step.turned;

import drumline.step.solid.Face;
import drumline.step.solid.Loop;
import drumline.step.space.Frame;
import drumline.step.space.Vec;
import java.util.ArrayList;
import java.util.List;

/** Where bounds of faces cross a plane square to the axis. */
public final class Crossings {

  private Crossings() {}

  /**
   * Radii at which a face crosses a place along the axis, as far as its bounds tell: where it goes
   * by without a bound, its greatest radius stands for it.
   */
  public static List<Double> radiiOrGreatest(Face face, Frame axis, double z) {
    List<Double> radii = radii(face, axis, z);
    double[] span = face.span(axis);
    if (radii.isEmpty() && span[0] < z && z < span[1]) {
      face.points().mapToDouble(axis::radius).max().ifPresent(radii::add);
    }
    return radii;
  }

  /** Radii at which the bounds of a face cross a place along the axis. */
  public static List<Double> radii(Face face, Frame axis, double z) {
    List<Double> radii = new ArrayList<>();
    for (Loop loop : face.loops()) {
      List<Vec> points = loop.points();
      for (int i = 0; i < points.size(); i++) {
        Vec a = points.get(i);
        Vec b = points.get((i + 1) % points.size());
        double za = axis.along(a) - z;
        double zb = axis.along(b) - z;
        if (za < 0 != zb < 0) {
          radii.add(axis.radius(a.plus(b.minus(a).times(za / (za - zb)))));
        }
      }
    }
    return radii;
  }
}
