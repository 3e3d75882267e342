package drumline.step.feature;

import drumline.step.space.Frame;
import drumline.step.space.Vec;
import drumline.step.turned.Near;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds slots outside and across faces, and keyways in bores. */
public final class SlotFinder {
  private final Scene scene;
  private final List<SidePlane> planes;
  private final List<Found> found = new ArrayList<>();

  /** Looks through what of a scene is not explained yet. */
  public SlotFinder(Scene scene) {
    this.scene = scene;
    this.planes =
        SidePlane.all(scene).stream()
            .filter(p -> p.faces().stream().noneMatch(scene::isExplained))
            .toList();
  }

  /** The slots; their faces are explained. */
  public List<Found> features() {
    List<SidePlane> done = new ArrayList<>();
    for (SidePlane bottom : planes) {
      Optional<SidePlane> wall = done.contains(bottom) ? Optional.empty() : wall(bottom);
      if (wall.isPresent() && bottom.off() > 0) {
        outsideSlots(bottom, wall.get(), done);
      } else if (wall.isPresent() && isBeyondBore(bottom)) {
        keyway(bottom, wall.get());
      }
    }
    for (SidePlane wall : planes) {
      if (wall.faces().stream().noneMatch(scene::isExplained) && isPaired(wall)) {
        faceSlot(wall);
      }
    }
    return found;
  }

  private boolean isBeyondBore(SidePlane bottom) {
    double bore = scene.insideAt((bottom.z0() + bottom.z1()) / 2);
    return bore > 0 && -bottom.off() > bore;
  }

  /** A wall beside a bottom, if the bottom lies between two that face each other. */
  private Optional<SidePlane> wall(SidePlane bottom) {
    return planes.stream()
        .filter(p -> p.off() < 0 && p.isSquareTo(bottom) && p.overlaps(bottom) && isPaired(p))
        .filter(p -> bottom.reach() <= -p.off() + 2 * Near.MM)
        .findFirst();
  }

  private boolean isPaired(SidePlane wall) {
    return wall.off() < 0
        && planes.stream()
            .anyMatch(
                p -> p.isOpposite(wall) && Near.isSame(p.off(), wall.off()) && p.overlaps(wall));
  }

  private void outsideSlots(SidePlane bottom, SidePlane wall, List<SidePlane> done) {
    List<SidePlane> alike =
        planes.stream()
            .filter(p -> Near.isSame(p.off(), bottom.off()) && p.isSameStretch(bottom))
            .filter(p -> wall(p).map(w -> Near.isSame(w.off(), wall.off())).orElse(false))
            .toList();
    done.addAll(alike);
    double surface = scene.outsideAt((bottom.z0() + bottom.z1()) / 2);
    found.add(
        Found.of("slot")
            .with("place", "outside")
            .withMm("at", bottom.z0())
            .withMm("width", -2 * wall.off())
            .withMm("depth", surface - bottom.off())
            .withMm("length", bottom.z1() - bottom.z0())
            .with("count", alike.size()));
    if (alike.size() > 1 && !SidePlane.isEven(alike)) {
      scene.note("NOT WRITTEN: the %d slots are not equally spaced", alike.size());
    }
    alike.forEach(b -> explain(b, wall));
  }

  private void explain(SidePlane bottom, SidePlane wall) {
    Frame axis = scene.axis();
    scene.explainIn(
        p ->
            isWithin(p, bottom)
                && bottom.along(axis, p) > bottom.off() - Near.MM
                && Math.abs(wall.along(axis, p)) < -wall.off() + Near.MM);
  }

  private boolean isWithin(Vec p, SidePlane plane) {
    double z = scene.axis().along(p);
    return z > plane.z0() - Near.MM && z < plane.z1() + Near.MM;
  }

  private void keyway(SidePlane bottom, SidePlane wall) {
    double middle = (bottom.z0() + bottom.z1()) / 2;
    boolean isFront = bottom.z0() < scene.length() - bottom.z1() + Near.MM;
    double length = isFront ? bottom.z1() : scene.length() - bottom.z0();
    found.add(
        Found.of("inside-form")
            .with("end", isFront ? "front" : "back")
            .with("form", "keyway")
            .withMm("width", -2 * wall.off())
            .withMm("radial-depth", -bottom.off() - scene.insideAt(middle))
            .withMm("length", length));
    Frame axis = scene.axis();
    scene.explainIn(
        p ->
            isWithin(p, bottom)
                && bottom.along(axis, p) > bottom.off() - Near.MM
                && bottom.along(axis, p) < Near.MM
                && Math.abs(wall.along(axis, p)) < -wall.off() + Near.MM);
  }

  private void faceSlot(SidePlane wall) {
    boolean isFront = wall.z0() < 2 * Near.MM;
    boolean isBack = wall.z1() > scene.length() - 2 * Near.MM;
    if (isFront == isBack) {
      return;
    }
    found.add(
        Found.of("slot")
            .with("place", isFront ? "front-face" : "back-face")
            .withMm("width", -2 * wall.off())
            .withMm("depth", wall.z1() - wall.z0())
            .withMm("length", 2 * wall.reach()));
    scene.explainIn(
        p -> isWithin(p, wall) && Math.abs(wall.along(scene.axis(), p)) < -wall.off() + Near.MM);
  }
}
