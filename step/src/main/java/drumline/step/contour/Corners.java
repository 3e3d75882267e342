package drumline.step.contour;

import drumline.step.turned.Near;
import drumline.step.turned.Strand;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Turns stretches of a contour into steps: small cones beside a shoulder become chamfers, arcs that
 * touch both neighbours become radii, other arcs become tapers and are told.
 */
final class Corners {
  /** A cone beside a shoulder is a chamfer up to this leg; common practice. */
  private static final double LARGEST_CHAMFER_MM = 3;

  private static final double LEAST_ANGLE_DEG = 8;
  private static final double CHORD_MM = 0.02;
  private static final int MOST_CHORDS = 12;

  private final List<Side> sides = new ArrayList<>();
  private final List<String> notes;

  /** A stretch, or a shoulder where {@code segment} is null. */
  private static final class Side {
    private final double z;
    private final Optional<Segment> segment;
    private Optional<Step> step = Optional.empty();

    Side(double z) {
      this.z = z;
      this.segment = Optional.empty();
    }

    Side(Segment segment) {
      this.z = segment.z0();
      this.segment = Optional.of(segment);
    }

    boolean isShoulder() {
      return segment.isEmpty();
    }

    boolean isStraight() {
      return segment.isEmpty() || segment.get().arc() == null;
    }

    /** Point and direction (z, r) of the line it lies on. */
    double[] line() {
      if (segment.isEmpty()) {
        return new double[] {z, 0, 0, 1};
      }
      Segment s = segment.get();
      double dz = s.z1() - s.z0();
      double dr = s.isCylinder() ? 0 : s.r1() - s.r0();
      double length = Math.hypot(dz, dr);
      return new double[] {s.z0(), s.r0(), dz / length, dr / length};
    }
  }

  private Corners(List<String> notes) {
    this.notes = notes;
  }

  /** The steps of contiguous stretches; shoulders at both ends where these end off the axis. */
  static List<Step> steps(List<Segment> segments, List<String> notes) {
    Corners corners = new Corners(notes);
    corners.lay(segments);
    corners.edges();
    List<Step> steps = new ArrayList<>();
    corners.sides.forEach(side -> side.step.ifPresent(steps::add));
    return steps;
  }

  private void lay(List<Segment> segments) {
    double r = -1;
    for (Segment segment : segments) {
      boolean isSteep = startsSteep(segment) || (!sides.isEmpty() && endsSteep(sides));
      boolean isShoulder =
          r < 0 ? segment.r0() > Near.MM : isSteep || !Near.isSame(r, segment.r0());
      if (isShoulder) {
        sides.add(new Side(segment.z0()));
      }
      sides.add(new Side(segment));
      r = segment.r1();
    }
    if (r > Near.MM) {
      sides.add(new Side(segments.get(segments.size() - 1).z1()));
    }
  }

  private static boolean startsSteep(Segment s) {
    return s.arc() != null && Math.abs(Math.abs(s.z0() - s.arc().z()) - s.arc().radius()) < 1e-3;
  }

  private static boolean endsSteep(List<Side> sides) {
    Optional<Segment> last = sides.get(sides.size() - 1).segment;
    return last.isPresent()
        && last.get().arc() != null
        && Math.abs(Math.abs(last.get().z1() - last.get().arc().z()) - last.get().arc().radius())
            < 1e-3;
  }

  private void edges() {
    boolean[] isEdge = new boolean[sides.size()];
    Rim[] rims = new Rim[sides.size()];
    for (int i = 1; i + 1 < sides.size(); i++) {
      Side before = sides.get(i - 1);
      Side after = sides.get(i + 1);
      rims[i] = Rim.NONE;
      if (!isEdge[i - 1]
          && before.isStraight()
          && after.isStraight()
          && !sides.get(i).isShoulder()) {
        rims[i] = rim(before, sides.get(i), after);
        isEdge[i] = rims[i].isMeasured();
      }
    }
    for (int i = 0; i < sides.size(); i++) {
      Side side = sides.get(i);
      if (!isEdge[i] && side.segment.isPresent()) {
        Segment s = side.segment.get();
        if (s.arc() == null) {
          side.step =
              Optional.of(
                  new Step(s.z0(), s.r0(), s.z1(), s.r1(), Rim.NONE, Rim.NONE, s.isTurned()));
        }
      }
    }
    for (int i = 1; i + 1 < sides.size(); i++) {
      if (isEdge[i]) {
        put(sides.get(i - 1), rims[i], sides.get(i + 1));
      }
    }
    chords(isEdge);
  }

  private static Rim rim(Side before, Side side, Side after) {
    Segment s = side.segment.orElseThrow();
    return s.arc() == null ? chamfer(before, s, after) : radius(before, s.arc(), after);
  }

  private static Rim chamfer(Side before, Segment s, Side after) {
    if (s.isCylinder() || before.isShoulder() == after.isShoulder()) {
      return Rim.NONE;
    }
    Segment other = (before.isShoulder() ? after : before).segment.orElseThrow();
    double radial = Math.abs(s.r1() - s.r0());
    double angle = Math.toDegrees(Math.atan2(radial, s.length()));
    boolean isSmall = Math.max(s.length(), radial) <= LARGEST_CHAMFER_MM + Near.MM;
    boolean isSteep = angle > LEAST_ANGLE_DEG && angle < 90 - LEAST_ANGLE_DEG;
    boolean isOnCylinder = other.isCylinder();
    double legMm = s.length();
    return isSmall && isSteep && isOnCylinder ? new Rim(Rim.Kind.CHAMFER, legMm, angle) : Rim.NONE;
  }

  private static Rim radius(Side before, Strand.Arc arc, Side after) {
    boolean touches = touches(before, arc) && touches(after, arc);
    return touches ? new Rim(Rim.Kind.RADIUS, arc.radius(), 45) : Rim.NONE;
  }

  /** Whether a line touches an arc's circle. */
  private static boolean touches(Side side, Strand.Arc arc) {
    double[] l = side.line();
    double off = (arc.z() - l[0]) * l[3] - (arc.r() - l[1]) * l[2];
    return Math.abs(Math.abs(off) - arc.radius()) < 2 * Near.MM;
  }

  private static void put(Side before, Rim rim, Side after) {
    double[] a = before.line();
    double[] b = after.line();
    double cross = a[2] * b[3] - a[3] * b[2];
    double t = ((b[0] - a[0]) * b[3] - (b[1] - a[1]) * b[2]) / cross;
    double z = a[0] + t * a[2];
    double r = a[1] + t * a[3];
    boolean isAtFront = after.step.isPresent();
    if (before.step.isPresent()) {
      Rim own = isAtFront ? Rim.NONE : rim;
      before.step = Optional.of(before.step.get().withEnd(z, r, own));
    }
    if (after.step.isPresent()) {
      after.step = Optional.of(after.step.get().withStart(z, r, rim));
    }
  }

  /** Arcs that are no edges become tapers. */
  private void chords(boolean[] isEdge) {
    for (int i = sides.size() - 1; i >= 0; i--) {
      Optional<Segment> segment = sides.get(i).segment;
      if (!isEdge[i] && segment.isPresent() && segment.get().arc() != null) {
        List<Side> pieces = pieces(segment.get());
        sides.remove(i);
        sides.addAll(i, pieces);
      }
    }
  }

  private List<Side> pieces(Segment s) {
    Strand.Arc arc = java.util.Objects.requireNonNull(s.arc());
    double from = Math.atan2(s.r0() - arc.r(), s.z0() - arc.z());
    double to = Math.atan2(s.r1() - arc.r(), s.z1() - arc.z());
    double step = 2 * Math.acos(Math.max(0.5, 1 - CHORD_MM / arc.radius()));
    int count = (int) Math.ceil(Math.abs(to - from) / step);
    count = Math.max(1, Math.min(MOST_CHORDS, count));
    double chord = arc.radius() * (1 - Math.cos(Math.abs(to - from) / count / 2));
    notes.add(
        String.format(
            Locale.ROOT,
            "an arc R%.3f mm from z %.3f to %.3f mm, Ø%.3f to Ø%.3f, is written as %d tapers,"
                + " within %.3f mm: the form has no free arcs",
            arc.radius(),
            s.z0(),
            s.z1(),
            2 * s.r0(),
            2 * s.r1(),
            count,
            chord));
    List<Side> pieces = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      double a = from + (to - from) * k / count;
      double b = from + (to - from) * (k + 1) / count;
      Segment piece =
          new Segment(
              arc.z() + arc.radius() * Math.cos(a),
              arc.r() + arc.radius() * Math.sin(a),
              arc.z() + arc.radius() * Math.cos(b),
              arc.r() + arc.radius() * Math.sin(b),
              null,
              true);
      Side side = new Side(piece);
      side.step =
          Optional.of(
              new Step(piece.z0(), piece.r0(), piece.z1(), piece.r1(), Rim.NONE, Rim.NONE, true));
      pieces.add(side);
    }
    return pieces;
  }
}
