package drumline.step.feature;

import drumline.step.solid.Face;
import drumline.step.surface.Surface;
import drumline.step.turned.Coverage;
import java.util.ArrayList;
import java.util.List;

/** Tells of every face that nothing explains: what it is, where, how large. */
public final class RestFinder {
  private static final double ALL_AROUND_RAD = Math.toRadians(300);

  private RestFinder() {}

  /** Notes on the faces of a scene that are left. */
  public static void tell(Scene scene) {
    List<Face> free =
        new ArrayList<>(
            scene.faces().stream()
                .filter(f -> !scene.isExplained(f))
                .filter(f -> f.surface() instanceof Surface.FreeForm)
                .toList());
    while (!free.isEmpty()) {
      List<Face> group = connected(free, scene);
      free.removeAll(group);
      group(group, scene);
    }
    for (Face face : scene.faces()) {
      if (!scene.isExplained(face)) {
        double[] box = box(List.of(face), scene);
        scene.note(
            "NOT UNDERSTOOD: face #%d, %s, z %.3f to %.3f mm, radius %.3f to %.3f mm",
            face.id(), face.surface().words(), box[0], box[1], box[2], box[3]);
      }
    }
  }

  /** Free-form faces that overlap the first one along the axis, directly or through others. */
  private static List<Face> connected(List<Face> free, Scene scene) {
    List<Face> group = new ArrayList<>(List.of(free.get(0)));
    boolean grew = true;
    while (grew) {
      double[] reach = box(group, scene);
      List<Face> more =
          free.stream()
              .filter(f -> !group.contains(f))
              .filter(
                  f -> {
                    double[] own = box(List.of(f), scene);
                    return own[0] <= reach[1] && own[1] >= reach[0];
                  })
              .toList();
      grew = group.addAll(more);
    }
    return group;
  }

  private static void group(List<Face> group, Scene scene) {
    double[] box = box(group, scene);
    boolean isBand = box[3] - box[2] < 0.3 * box[3] && box[2] > 0;
    if (isBand && Coverage.rad(group, scene.axis()) > ALL_AROUND_RAD) {
      scene.note(
          "PROBABLY A THREAD from z %.3f to %.3f mm, near Ø%.3f mm (bounds between Ø%.3f and"
              + " Ø%.3f mm): add its designation",
          box[0], box[1], 2 * box[3], 2 * box[2], 2 * box[3]);
      group.forEach(scene::explain);
    }
  }

  /** Least and greatest z, least and greatest radius. */
  private static double[] box(List<Face> faces, Scene scene) {
    double[] box = {Double.MAX_VALUE, -Double.MAX_VALUE, Double.MAX_VALUE, 0};
    for (Face face : faces) {
      double[] span = face.span(scene.axis());
      box[0] = Math.min(box[0], span[0]);
      box[1] = Math.max(box[1], span[1]);
      box[2] = Math.min(box[2], face.points().mapToDouble(scene.axis()::radius).min().orElse(0));
      box[3] = Math.max(box[3], face.points().mapToDouble(scene.axis()::radius).max().orElse(0));
    }
    return box;
  }
}
