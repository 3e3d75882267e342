package drumline.step.feature;

import drumline.step.solid.Face;
import drumline.step.space.Frame;
import drumline.step.space.Vec;
import drumline.step.surface.Surface;
import drumline.step.turned.Coverage;
import drumline.step.turned.Near;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A round hole off the piece's axis, of one or several faces.
 *
 * @param line its own axis
 * @param radius its radius
 * @param t0 where its wall begins along its own axis
 * @param t1 where its wall ends
 * @param isBlind whether a face closes it at {@code t0}
 * @param isBlindAhead whether a face closes it at {@code t1}
 * @param faces faces of its wall
 */
record Hole(
    Frame line,
    double radius,
    double t0,
    double t1,
    boolean isBlind,
    boolean isBlindAhead,
    List<Face> faces) {
  private static final double WHOLE_RAD = Math.toRadians(300);

  Hole {
    faces = List.copyOf(faces);
  }

  /** All holes of a scene that go around their own axis. */
  static List<Hole> all(Scene scene) {
    List<Face> left = new ArrayList<>();
    for (Face face : scene.faces()) {
      if (face.surface() instanceof Surface.Cylinder c
          && !scene.isExplained(face)
          && !scene.axis().isCoaxial(c.frame(), Near.RAD, Near.MM)
          && isHollow(face, c)) {
        left.add(face);
      }
    }
    List<Hole> holes = new ArrayList<>();
    while (!left.isEmpty()) {
      Surface.Cylinder first = (Surface.Cylinder) left.get(0).surface();
      List<Face> same =
          left.stream()
              .filter(
                  f ->
                      f.surface() instanceof Surface.Cylinder c
                          && Near.isSame(c.radiusMm(), first.radiusMm())
                          && first.frame().isCoaxial(c.frame(), Near.RAD, Near.MM))
              .toList();
      left.removeAll(same);
      if (Coverage.rad(same, first.frame()) > WHOLE_RAD) {
        holes.add(of(same, first, scene));
      }
    }
    return holes;
  }

  private static boolean isHollow(Face face, Surface.Cylinder c) {
    Optional<Vec> any = face.points().findFirst();
    return any.isPresent() && face.outward(any.get()).dot(c.frame().radial(any.get())) < 0;
  }

  private static Hole of(List<Face> faces, Surface.Cylinder c, Scene scene) {
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (Face face : faces) {
      double[] span = face.span(c.frame());
      low = Math.min(low, span[0]);
      high = Math.max(high, span[1]);
    }
    return new Hole(
        c.frame(),
        c.radiusMm(),
        low,
        high,
        isClosed(scene, c, low),
        isClosed(scene, c, high),
        faces);
  }

  /** Whether a face closes a hole at a place along its axis. */
  private static boolean isClosed(Scene scene, Surface.Cylinder c, double t) {
    return scene.faces().stream()
        .filter(f -> !(f.surface() instanceof Surface.Cylinder))
        .anyMatch(
            f ->
                f.points().anyMatch(p -> Math.abs(c.frame().along(p) - t) < 2 * Near.MM)
                    && f.points().allMatch(p -> c.frame().radius(p) < c.radiusMm() + Near.MM)
                    && f.turns(c.frame()) != 0);
  }

  /** The same with its axis the other way round. */
  Hole turned() {
    Frame back = new Frame(line.origin(), line.x(), line.y().times(-1), line.z().times(-1));
    return new Hole(back, radius, -t1, -t0, isBlindAhead, isBlind, faces);
  }
}
