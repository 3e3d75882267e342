package drumline.step.turned;

import drumline.step.solid.Face;
import drumline.step.space.Frame;
import drumline.step.space.Vec;
import drumline.step.surface.Surface;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The turning axis: the line around which the most area is turned. Each cylinder, cone, ring and
 * turned free form votes for its own axis with its area; planes square to it and balls on it add
 * theirs.
 */
public final class AxisVote {

  private AxisVote() {}

  private record Vote(Frame axis, double area) {}

  /** The axis; empty where nothing is turned. Its origin lies at the least z of the faces. */
  public static Optional<Frame> find(List<Face> faces) {
    List<Vote> votes = new ArrayList<>();
    for (Face face : faces) {
      ownAxis(face.surface()).ifPresent(axis -> votes.add(new Vote(axis, area(face, axis))));
    }
    List<Vote> lines = new ArrayList<>();
    for (Vote vote : votes) {
      if (lines.stream().noneMatch(l -> l.axis().isCoaxial(vote.axis(), Near.RAD, 2 * Near.MM))) {
        double sum =
            votes.stream()
                .filter(v -> vote.axis().isCoaxial(v.axis(), Near.RAD, 2 * Near.MM))
                .mapToDouble(Vote::area)
                .sum();
        lines.add(new Vote(vote.axis(), sum + squareArea(faces, vote.axis())));
      }
    }
    return lines.stream()
        .max(Comparator.comparingDouble(Vote::area))
        .map(best -> heaviest(votes, best.axis()))
        .map(axis -> placed(axis, faces));
  }

  private static Frame heaviest(List<Vote> votes, Frame axis) {
    return votes.stream()
        .filter(v -> axis.isCoaxial(v.axis(), Near.RAD, 2 * Near.MM))
        .max(Comparator.comparingDouble(Vote::area))
        .map(Vote::axis)
        .orElse(axis);
  }

  private static Frame placed(Frame axis, List<Face> faces) {
    double low = Double.MAX_VALUE;
    for (Face face : faces) {
      low = Math.min(low, Strands.reach(face, axis)[0]);
    }
    return new Frame(axis.origin().plus(axis.z().times(low)), axis.x(), axis.y(), axis.z());
  }

  static Optional<Frame> ownAxis(Surface surface) {
    if (surface instanceof Surface.Cylinder cylinder) {
      return Optional.of(cylinder.frame());
    }
    if (surface instanceof Surface.Cone cone) {
      return Optional.of(cone.frame());
    }
    if (surface instanceof Surface.Torus torus) {
      return Optional.of(torus.frame());
    }
    return surface instanceof Surface.Lathe lathe ? Optional.of(lathe.frame()) : Optional.empty();
  }

  /** Area of a turned face, roughly: mean radius × angle × length along its half-section. */
  private static double area(Face face, Frame axis) {
    double[] span = face.span(axis);
    double low = Double.MAX_VALUE;
    double high = 0;
    for (Vec p : (Iterable<Vec>) face.points()::iterator) {
      low = Math.min(low, axis.radius(p));
      high = Math.max(high, axis.radius(p));
    }
    double length = Math.hypot(span[1] - span[0], high - low);
    return (low + high) / 2 * length * Coverage.rad(face, axis);
  }

  /** Planes square to an axis whose bounds go around it, as full rings. */
  private static double squareArea(List<Face> faces, Frame axis) {
    double sum = 0;
    for (Face face : faces) {
      if (face.surface() instanceof Surface.Plane plane
          && axis.isParallel(plane.frame().z(), Near.RAD)
          && Coverage.rad(face, axis) > 6) {
        double high = face.points().mapToDouble(axis::radius).max().orElse(0);
        double low = face.points().mapToDouble(axis::radius).min().orElse(0);
        sum += Math.PI * (high * high - low * low);
      }
    }
    return sum;
  }
}
