package drumline.step.piece;

import drumline.step.contour.Segment;
import drumline.step.turned.Near;
import drumline.step.turned.Strand;
import java.util.List;

/**
 * Whether turned faces lie on the contour that was read.
 *
 * @param outer stretches of the outside
 * @param inner stretches of the bores
 * @param length length of the piece
 */
record ContourMatch(List<Segment> outer, List<Segment> inner, double length) {

  boolean isOn(Strand strand) {
    return strand.isSquare()
        ? isShoulder(outer, strand) || isShoulder(inner, strand)
        : isAlong(outer, strand) || isAlong(inner, strand);
  }

  private static boolean isAlong(List<Segment> chain, Strand strand) {
    double z = (strand.z0() + strand.z1()) / 2;
    for (Segment s : chain) {
      boolean isHere = s.z0() <= z && z <= s.z1();
      boolean isSameArc = s.arc() != null && strand.arc() != null && s.arc().isSame(strand.arc());
      boolean isSameLine = s.arc() == null && Math.abs(s.at(z) - strand.at(z)) < 2 * Near.MM;
      if (isHere && (isSameArc || isSameLine)) {
        return true;
      }
    }
    return false;
  }

  private boolean isShoulder(List<Segment> chain, Strand strand) {
    double z = strand.z0();
    double before = radius(chain, z, true);
    double after = radius(chain, z, false);
    double low = Math.min(before, after) - Near.MM;
    double high = Math.max(before, after) + Near.MM;
    double least = Math.min(strand.r0(), strand.r1());
    double most = Math.max(strand.r0(), strand.r1());
    return high - low > 3 * Near.MM && least >= low && most <= high;
  }

  private static double radius(List<Segment> chain, double z, boolean isBefore) {
    double radius = 0;
    for (Segment s : chain) {
      double end = isBefore ? s.z1() : s.z0();
      if (Near.isSame(end, z)) {
        radius = Math.max(radius, isBefore ? s.r1() : s.r0());
      } else if (s.z0() < z - Near.MM && z + Near.MM < s.z1()) {
        radius = Math.max(radius, s.at(z));
      }
    }
    return radius;
  }
}
