package drumline.step.brep;

import java.util.List;

/**
 * A piece of a half-section; the material lies to the right of the way.
 *
 * @param z0 beginning along the axis
 * @param r0 radius there
 * @param z1 end along the axis
 * @param r1 radius there
 * @param arc middle (z, r) and whether it turns to the left; null for a straight line
 */
public record Line(double z0, double r0, double z1, double r1, List<Double> arc) {

  /** A straight line. */
  public static Line straight(double z0, double r0, double z1, double r1) {
    return new Line(z0, r0, z1, r1, null);
  }

  boolean isLeft() {
    return arc.get(2) > 0;
  }

  double radius() {
    return Math.hypot(z0 - arc.get(0), r0 - arc.get(1));
  }
}
