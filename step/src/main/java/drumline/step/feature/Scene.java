package drumline.step.feature;

import drumline.step.contour.Segment;
import drumline.step.solid.Face;
import drumline.step.space.Frame;
import drumline.step.space.Vec;
import drumline.step.turned.Near;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;

/** What the finders of features share: the faces, the axis, the contour, and what is explained. */
public final class Scene {
  private final Frame axis;
  private final double length;
  private final List<Face> faces;
  private final Set<Integer> explained = new HashSet<>();
  private final List<String> notes = new ArrayList<>();
  private List<Segment> outside = List.of();
  private List<Segment> inside = List.of();

  /**
   * A scene.
   *
   * @param axis the piece's axis, z = 0 at the front
   * @param length the piece's length
   */
  public Scene(Frame axis, double length, List<Face> faces) {
    this.axis = axis;
    this.length = length;
    this.faces = List.copyOf(faces);
  }

  /** The contour, once it is known. */
  public void contour(List<Segment> outer, List<Segment> inner) {
    outside = List.copyOf(outer);
    inside = List.copyOf(inner);
  }

  Frame axis() {
    return axis;
  }

  double length() {
    return length;
  }

  /** Faces. */
  public List<Face> faces() {
    return faces;
  }

  /** Notes for the user, in the order found. */
  public List<String> notes() {
    return notes;
  }

  void note(String text, Object... values) {
    notes.add(String.format(Locale.ROOT, text, values));
  }

  /** Marks a face as explained. */
  public void explain(Face face) {
    explained.add(face.id());
  }

  /** Whether a face is explained. */
  public boolean isExplained(Face face) {
    return explained.contains(face.id());
  }

  /** Marks all faces whose bounds lie wholly in a room. */
  void explainIn(Predicate<Vec> room) {
    for (Face face : faces) {
      if (!isExplained(face) && face.points().allMatch(room)) {
        explain(face);
      }
    }
  }

  /** Radius of the outside at a place along the axis. */
  double outsideAt(double z) {
    return at(outside, z);
  }

  /** Radius of the bore at a place along the axis, 0 where it is solid. */
  double insideAt(double z) {
    return at(inside, z);
  }

  private static double at(List<Segment> segments, double z) {
    double radius = 0;
    for (Segment s : segments) {
      if (z >= s.z0() - Near.MM && z <= s.z1() + Near.MM) {
        radius = Math.max(radius, s.at(Math.max(s.z0(), Math.min(s.z1(), z))));
      }
    }
    return radius;
  }
}
