package drumline.step.contour;

/**
 * A cylinder or taper of a contour, its corners where its neighbours' surfaces would meet it.
 *
 * @param z0 where it begins, from the front face
 * @param r0 radius there
 * @param z1 where it ends
 * @param r1 radius there
 * @param front edge at its beginning
 * @param back edge at its end
 * @param isTurned whether it is turned; else corners of flats stand for it
 */
public record Step(
    double z0, double r0, double z1, double r1, Rim front, Rim back, boolean isTurned) {

  /** Whether it is a cylinder. */
  public boolean isCylinder() {
    return drumline.step.turned.Near.isSame(r0, r1);
  }

  /** Length along the axis. */
  public double length() {
    return z1 - z0;
  }

  Step withStart(double z, double r, Rim rim) {
    return new Step(z, r, z1, r1, rim, back, isTurned);
  }

  Step withEnd(double z, double r, Rim rim) {
    return new Step(z0, r0, z, r, front, rim, isTurned);
  }

  /** The same seen from the other end of a piece. */
  Step turned(double length) {
    return new Step(length - z1, r1, length - z0, r0, back, front, isTurned);
  }
}
