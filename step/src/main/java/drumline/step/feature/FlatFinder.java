package drumline.step.feature;

import drumline.step.space.Frame;
import drumline.step.turned.Near;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds flats and polygons outside. */
public final class FlatFinder {
  private final Scene scene;
  private Optional<BarHint> bar = Optional.empty();

  /**
   * A polygon that may be the bar's own.
   *
   * @param sides how many flats
   * @param across size across flats
   * @param z0 where it begins
   * @param z1 where it ends
   */
  public record BarHint(int sides, double across, double z0, double z1) {}

  /** Looks through what of a scene is not explained yet. */
  public FlatFinder(Scene scene) {
    this.scene = scene;
  }

  /** The polygon that may be the bar's own, once features are found. */
  public Optional<BarHint> bar() {
    return bar;
  }

  /**
   * The flats; their faces are explained.
   *
   * @param largestTurnedRadius greatest radius of a turned face outside
   */
  public List<Found> features(double largestTurnedRadius) {
    List<SidePlane> left =
        new ArrayList<>(
            SidePlane.all(scene).stream()
                .filter(p -> p.off() > Near.MM)
                .filter(p -> p.faces().stream().noneMatch(scene::isExplained))
                .toList());
    List<Found> found = new ArrayList<>();
    while (!left.isEmpty()) {
      SidePlane first = left.get(0);
      List<SidePlane> same =
          left.stream()
              .filter(p -> Near.isSame(p.off(), first.off()) && p.isSameStretch(first))
              .toList();
      left.removeAll(same);
      boolean isOne = SidePlane.isEven(same);
      if (isOne && isBar(same, largestTurnedRadius)) {
        bar = Optional.of(new BarHint(same.size(), 2 * first.off(), first.z0(), first.z1()));
      } else if (isOne && same.size() <= 12) {
        found.add(flats(first, same.size()));
      } else {
        same.forEach(p -> found.add(flats(p, 1)));
        scene.note(
            "NOT WRITTEN: the %d flats from z %.3f to %.3f mm are not equally spaced; written one"
                + " by one",
            same.size(), first.z0(), first.z1());
      }
      same.forEach(this::explain);
    }
    return found;
  }

  /** Whether it is a hexagon or square with its corners whole, and nothing turned stands out. */
  private boolean isBar(List<SidePlane> planes, double largestTurnedRadius) {
    int count = planes.size();
    double across = 2 * planes.get(0).off();
    double corner = across / 2 / Math.cos(Math.PI / count);
    double middle = (planes.get(0).z0() + planes.get(0).z1()) / 2;
    return (count == 4 || count == 6)
        && scene.outsideAt(middle) > corner - 4 * Near.MM
        && largestTurnedRadius <= across / 2 + Near.MM;
  }

  private static Found flats(SidePlane one, int count) {
    return Found.of("flats")
        .withMm("from", one.z0())
        .withMm("to", one.z1())
        .withMm("across", 2 * one.off())
        .with("count", count);
  }

  private void explain(SidePlane flat) {
    Frame axis = scene.axis();
    flat.faces().forEach(scene::explain);
    scene.explainIn(
        p ->
            axis.along(p) > flat.z0() - Near.MM
                && axis.along(p) < flat.z1() + Near.MM
                && flat.along(axis, p) > flat.off() - Near.MM);
  }
}
