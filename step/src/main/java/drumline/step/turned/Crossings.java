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
