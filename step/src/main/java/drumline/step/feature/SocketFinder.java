package drumline.step.feature;

import drumline.step.contour.Envelope;
import drumline.step.turned.Near;
import java.util.ArrayList;
import java.util.List;

/** Finds inside squares and hexagons among the planes along the axis. */
public final class SocketFinder {
  private final Scene scene;
  private final List<List<SidePlane>> sockets = new ArrayList<>();

  /** Looks through a scene. */
  public SocketFinder(Scene scene) {
    this.scene = scene;
    List<SidePlane> inward =
        new ArrayList<>(SidePlane.all(scene).stream().filter(p -> p.off() < -Near.MM).toList());
    while (!inward.isEmpty()) {
      SidePlane first = inward.get(0);
      List<SidePlane> same =
          inward.stream()
              .filter(p -> Near.isSame(p.off(), first.off()) && p.isSameStretch(first))
              .toList();
      inward.removeAll(same);
      if (isSocket(same)) {
        sockets.add(same);
      }
    }
  }

  private static boolean isSocket(List<SidePlane> planes) {
    int count = planes.size();
    double side = -planes.get(0).off() * Math.tan(Math.PI / count);
    return (count == 4 || count == 6)
        && SidePlane.isEven(planes)
        && planes.stream().allMatch(p -> p.reach() < side + 4 * Near.MM);
  }

  /** Where the sockets lie, for the contour. */
  public List<Envelope.Socket> rooms() {
    return sockets.stream()
        .map(s -> new Envelope.Socket(s.get(0).z0(), s.get(0).z1(), -s.get(0).off()))
        .toList();
  }

  /** The sockets as features; their faces are explained. */
  public List<Found> features() {
    List<Found> found = new ArrayList<>();
    for (List<SidePlane> socket : sockets) {
      SidePlane one = socket.get(0);
      boolean isFront = one.z0() < scene.length() - one.z1();
      double faceOff = isFront ? one.z0() : scene.length() - one.z1();
      double depth = isFront ? one.z1() : scene.length() - one.z0();
      found.add(
          Found.of("inside-form")
              .with("end", isFront ? "front" : "back")
              .with("form", socket.size() == 6 ? "hexagon" : "square")
              .withMm("width", -2 * one.off())
              .withMm("length", depth));
      if (faceOff > 2 * Near.MM) {
        scene.note(
            "the inside form begins %.3f mm behind the face; the form counts from the face",
            faceOff);
      }
      double corner = -one.off() / Math.cos(Math.PI / socket.size());
      scene.explainIn(
          p ->
              scene.axis().radius(p) < corner + Near.MM
                  && scene.axis().along(p) > one.z0() - Near.MM
                  && scene.axis().along(p) < one.z1() + Near.MM
                  && socket.stream().allMatch(s -> s.along(scene.axis(), p) > s.off() - Near.MM));
    }
    return found;
  }
}
