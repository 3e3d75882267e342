package drumline.step.turned;

import drumline.step.solid.Face;
import org.jspecify.annotations.Nullable;

/**
 * A turned face in the half-section: a straight line or an arc that rises along z without turning
 * back, or a line square to the axis.
 *
 * @param face the face
 * @param z0 where it begins along the axis
 * @param r0 radius there
 * @param z1 where it ends, not before {@code z0}
 * @param r1 radius there
 * @param arc its circle; null for a straight line
 * @param outR radial part of the direction out of the material at its middle
 * @param outZ axial part of that direction
 */
public record Strand(
    Face face,
    double z0,
    double r0,
    double z1,
    double r1,
    @Nullable Arc arc,
    double outR,
    double outZ) {

  /**
   * Circle of an arc in the half-section.
   *
   * @param z its middle along the axis
   * @param r radius at which its middle lies
   * @param radius its own radius
   * @param isOuter whether the arc lies on the side away from the axis
   */
  public record Arc(double z, double r, double radius, boolean isOuter) {

    /** Radius at a place along the axis. */
    double at(double place) {
      double h = Math.sqrt(Math.max(0, radius * radius - (place - z) * (place - z)));
      return isOuter ? r + h : r - h;
    }

    /** Whether it is the same circle on the same side. */
    public boolean isSame(Arc o) {
      return isOuter == o.isOuter
          && Near.isSame(z, o.z)
          && Near.isSame(r, o.r)
          && Near.isSame(radius, o.radius);
    }
  }

  /** Whether it is square to the axis. */
  public boolean isSquare() {
    return z1 - z0 < 1e-4 && arc == null;
  }

  /** Whether it reaches over a place along the axis. */
  public boolean covers(double z) {
    return z0 < z && z < z1;
  }

  /** Radius at a place along the axis. */
  public double at(double z) {
    return arc != null ? arc.at(z) : z1 == z0 ? r0 : r0 + (r1 - r0) * (z - z0) / (z1 - z0);
  }

  /** The same seen from the other end of a piece. */
  Strand turned(double length) {
    Arc other = arc == null ? null : new Arc(length - arc.z, arc.r, arc.radius, arc.isOuter);
    return new Strand(face, length - z1, r1, length - z0, r0, other, outR, -outZ);
  }
}
