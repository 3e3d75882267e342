package drumline.step.feature;

import drumline.step.space.Frame;
import drumline.step.space.Vec;
import drumline.step.turned.Coverage;
import drumline.step.turned.Near;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds cross holes and face holes. */
public final class HoleFinder {
  private static final double OFF_MM = 0.02;

  private final Scene scene;

  /** Looks through what of a scene is not explained yet. */
  public HoleFinder(Scene scene) {
    this.scene = scene;
  }

  /** A cross hole before equal ones are put together. */
  private record Cross(
      double z, double angle, double lean, double radius, double depth, boolean isThrough) {

    boolean isLike(Cross o) {
      return Near.isSame(z, o.z)
          && Near.isSame(radius, o.radius)
          && Math.abs(depth - o.depth) < 4 * Near.MM
          && Math.abs(lean - o.lean) < 2e-3
          && isThrough == o.isThrough;
    }
  }

  /** A face hole before equal ones are put together. */
  private record Axial(boolean isFront, double pitch, double angle, double radius, double depth) {

    boolean isLike(Axial o) {
      return isFront == o.isFront
          && Near.isSame(pitch, o.pitch)
          && Near.isSame(radius, o.radius)
          && Math.abs(depth - o.depth) < 4 * Near.MM;
    }
  }

  /** The holes; their faces are explained. */
  public List<Found> features() {
    List<Cross> crosses = new ArrayList<>();
    List<Axial> axials = new ArrayList<>();
    for (Hole hole : Hole.all(scene)) {
      if (scene.axis().isParallel(hole.line().z(), Near.RAD)) {
        axials.add(axial(hole));
        explain(hole);
      } else if (meets(hole)) {
        crosses.add(cross(hole));
        explain(hole);
      }
    }
    List<Found> found = new ArrayList<>(crossFeatures(crosses));
    found.addAll(axialFeatures(axials));
    return found;
  }

  private void explain(Hole hole) {
    Frame line = hole.line();
    double tip = hole.radius() * 1.2;
    scene.explainIn(
        p ->
            line.radius(p) < hole.radius() + Near.MM
                && line.along(p) > hole.t0() - tip
                && line.along(p) < hole.t1() + tip);
  }

  private boolean meets(Hole hole) {
    Vec across = scene.axis().z().cross(hole.line().z()).unit();
    return Math.abs(hole.line().origin().minus(scene.axis().origin()).dot(across)) < OFF_MM;
  }

  private Cross cross(Hole given) {
    Vec d = given.line().z();
    Vec z = scene.axis().z();
    Vec fromAxis = scene.axis().origin().minus(given.line().origin());
    double lean = Math.asin(Math.max(-1, Math.min(1, d.dot(z))));
    double cos2 = 1 - d.dot(z) * d.dot(z);
    double foot = (fromAxis.dot(d) - fromAxis.dot(z) * d.dot(z)) / cos2;
    boolean isAhead = Math.abs(given.t1() - foot) >= Math.abs(given.t0() - foot);
    Hole hole = isAhead ? given : given.turned();
    double at = isAhead ? foot : -foot;
    double leanOut = isAhead ? lean : -lean;
    Vec direction = hole.line().z();
    Vec footPoint = hole.line().origin().plus(direction.times(at));
    double mouth = hole.t1() - at;
    double zMm = scene.axis().along(footPoint) + mouth * direction.dot(z);
    boolean isThrough = !hole.isBlind() && hole.t0() - at < -Near.MM;
    double depth = isThrough ? 2 * mouth : mouth - (hole.t0() - at);
    Vec aim = scene.axis().origin().plus(direction);
    double angle = Coverage.angle(scene.axis(), aim);
    return new Cross(zMm, angle, leanOut, hole.radius(), depth, isThrough);
  }

  private List<Found> crossFeatures(List<Cross> crosses) {
    List<Cross> left = new ArrayList<>(crosses);
    left.sort(Comparator.comparingDouble(Cross::z).thenComparingDouble(Cross::angle));
    double datum = left.isEmpty() ? 0 : left.get(0).angle();
    List<Found> found = new ArrayList<>();
    while (!left.isEmpty()) {
      Cross first = left.get(0);
      List<Cross> same = left.stream().filter(first::isLike).toList();
      boolean isEven =
          !first.isThrough() && SidePlane.isEven(same.stream().mapToDouble(Cross::angle).toArray());
      List<Cross> taken = isEven ? same : List.of(first);
      left.removeAll(taken);
      double turn = Math.toDegrees(Math.IEEEremainder(first.angle() - datum, 2 * Math.PI));
      double angle = Math.abs(turn) < 1e-4 ? 0 : turn < 0 ? turn + 360 : turn;
      Found hole =
          Found.of("cross-holes")
              .withMm("at", first.z())
              .with("angle", new Found.Deg(angle))
              .withMm("diameter", 2 * first.radius())
              .withMm("depth", first.depth());
      if (Math.abs(first.lean()) > 1e-3) {
        hole = hole.with("lean", new Found.Deg(Math.toDegrees(first.lean())));
      }
      hole = first.isThrough() ? hole.with("reach", "through") : hole;
      found.add(taken.size() > 1 ? hole.with("count", taken.size()) : hole);
    }
    return found;
  }

  private Axial axial(Hole given) {
    boolean isAlong = given.line().z().dot(scene.axis().z()) > 0;
    Hole hole = isAlong ? given : given.turned();
    double z0 = scene.axis().along(hole.line().origin()) + hole.t0();
    double z1 = scene.axis().along(hole.line().origin()) + hole.t1();
    boolean isFront =
        hole.isBlindAhead() || (!hole.isBlind() && z0 < scene.length() - z1 + Near.MM);
    double start = isFront ? z0 : scene.length() - z1;
    if (start > 2 * Near.MM) {
      scene.note(
          "the hole Ø%.3f mm on a pitch circle of Ø%.3f mm begins %.3f mm behind the %s face; its"
              + " depth is counted from that face",
          2 * hole.radius(),
          2 * scene.axis().radius(hole.line().origin()),
          start,
          isFront ? "front" : "back");
    }
    return new Axial(
        isFront,
        scene.axis().radius(hole.line().origin()),
        Coverage.angle(scene.axis(), hole.line().origin()),
        hole.radius(),
        isFront ? z1 : scene.length() - z0);
  }

  private List<Found> axialFeatures(List<Axial> axials) {
    List<Axial> left = new ArrayList<>(axials);
    left.sort(Comparator.comparingDouble(Axial::pitch).thenComparingDouble(Axial::depth));
    List<Found> found = new ArrayList<>();
    while (!left.isEmpty()) {
      Axial first = left.get(0);
      List<Axial> same = left.stream().filter(first::isLike).toList();
      left.removeAll(same);
      found.add(
          Found.of("face-holes")
              .with("end", first.isFront() ? "front" : "back")
              .withMm("pitch-circle", 2 * first.pitch())
              .withMm("diameter", 2 * first.radius())
              .withMm("depth", first.depth())
              .with("count", same.size()));
      if (!SidePlane.isEven(same.stream().mapToDouble(Axial::angle).toArray())) {
        scene.note(
            "NOT WRITTEN: the %d holes Ø%.3f mm on a pitch circle of Ø%.3f mm are not equally"
                + " spaced",
            same.size(), 2 * first.radius(), 2 * first.pitch());
      }
    }
    return found;
  }
}
