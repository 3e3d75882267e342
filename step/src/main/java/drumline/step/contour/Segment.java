package drumline.step.contour;

import drumline.step.turned.Near;
import drumline.step.turned.Strand;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of the contour along the axis.
 *
 * @param z0 where it begins
 * @param r0 radius there
 * @param z1 where it ends
 * @param r1 radius there
 * @param arc its circle; null for a straight line
 * @param isTurned whether a turned face lies there; else corners of flats or of free forms
 */
public record Segment(
    double z0, double r0, double z1, double r1, Strand.@Nullable Arc arc, boolean isTurned) {

  /** A stretch of a strand. */
  static Segment of(Strand strand, double from, double to) {
    return new Segment(from, strand.at(from), to, strand.at(to), strand.arc(), true);
  }

  /** Length along the axis. */
  public double length() {
    return z1 - z0;
  }

  /** Whether it is a cylinder. */
  public boolean isCylinder() {
    return arc == null && Near.isSame(r0, r1);
  }

  /** Radius at a place along the axis. */
  public double at(double z) {
    return arc != null
        ? r0 + (r1 - r0) * (z - z0) / Math.max(1e-9, z1 - z0)
        : z1 - z0 < 1e-12 ? r0 : r0 + (r1 - r0) * (z - z0) / (z1 - z0);
  }

  /** Whether another stretch goes on with the same surface. */
  boolean goesOn(Segment next) {
    if (isTurned != next.isTurned || !Near.isSame(r1, next.r0) || !Near.isSame(z1, next.z0)) {
      return false;
    }
    if (arc != null || next.arc != null) {
      return arc != null && next.arc != null && arc.isSame(next.arc);
    }
    double joined = r0 + (next.r1 - r0) * (z1 - z0) / Math.max(1e-12, next.z1 - z0);
    boolean bothLevel = isCylinder() == next.isCylinder();
    return bothLevel && Math.abs(joined - r1) < Near.MM / 2;
  }

  Segment joined(Segment next) {
    return new Segment(z0, r0, next.z1, next.r1, arc, isTurned);
  }
}
