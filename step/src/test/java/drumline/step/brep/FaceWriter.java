package drumline.step.brep;

import static drumline.step.brep.StepText.flag;

import drumline.step.space.Vec;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes single faces, one bound after another; edges with the same ends are shared. */
public final class FaceWriter {
  private final StepText text;
  private final Map<String, String> vertices = new HashMap<>();
  private final Map<String, String> edges = new HashMap<>();
  private final List<String> faces = new ArrayList<>();

  public FaceWriter(StepText text) {
    this.text = text;
  }

  public List<String> faces() {
    return faces;
  }

  private static String key(Vec p) {
    return Math.round(p.x() * 1e5) + "," + Math.round(p.y() * 1e5) + "," + Math.round(p.z() * 1e5);
  }

  private String vertex(Vec p) {
    String known = vertices.get(key(p));
    if (known == null) {
      known = text.vertex(p);
      vertices.put(key(p), known);
    }
    return known;
  }

  private String oriented(String edge, boolean isForward) {
    return text.add("ORIENTED_EDGE('',*,*,%s,%s)", edge, flag(isForward));
  }

  /** A straight side. */
  public String line(Vec from, Vec to) {
    String back = edges.get("l" + key(to) + "|" + key(from));
    if (back != null) {
      return oriented(back, false);
    }
    String name = "l" + key(from) + "|" + key(to);
    String known = edges.get(name);
    if (known == null) {
      String curve = text.line(from, to);
      known = text.add("EDGE_CURVE('',%s,%s,%s,.T.)", vertex(from), vertex(to), curve);
      edges.put(name, known);
    }
    return oriented(known, true);
  }

  /** An arc, counter-clockwise around an axis; a full circle where both ends are one. */
  public String arc(Vec from, Vec to, Vec centre, Vec axis) {
    Vec zero = new Vec(0, 0, 0);
    String back = edges.get("a" + key(to) + key(from) + key(centre) + key(zero.minus(axis)));
    if (back != null) {
      return oriented(back, false);
    }
    String name = "a" + key(from) + key(to) + key(centre) + key(axis);
    String known = edges.get(name);
    if (known == null) {
      String place = text.placement(centre, axis, from.minus(centre).unit());
      String circle = text.add("CIRCLE('',%s,%s)", place, text.length(from.distance(centre)));
      known = text.add("EDGE_CURVE('',%s,%s,%s,.T.)", vertex(from), vertex(to), circle);
      edges.put(name, known);
    }
    return oriented(known, true);
  }

  /** A closed curve through points, as a B-spline of the first degree. */
  public String curve(List<Vec> points, boolean isForward) {
    String name = "c" + key(points.get(0)) + key(points.get(1));
    String known = edges.get(name);
    if (known == null) {
      List<Vec> closed = new ArrayList<>(points);
      closed.add(points.get(0));
      String list = closed.stream().map(text::point).collect(Collectors.joining(","));
      StringBuilder mults = new StringBuilder("2");
      StringBuilder knots = new StringBuilder("0.");
      for (int i = 1; i < closed.size(); i++) {
        mults.append(i + 1 == closed.size() ? ",2" : ",1");
        knots.append(',').append(i).append('.');
      }
      String spline =
          text.add(
              "B_SPLINE_CURVE_WITH_KNOTS('',1,(%s),.UNSPECIFIED.,.T.,.F.,(%s),(%s),.UNSPECIFIED.)",
              list, mults, knots);
      String v = vertex(points.get(0));
      known = text.add("EDGE_CURVE('',%s,%s,%s,.T.)", v, v, spline);
      edges.put(name, known);
    }
    return oriented(known, isForward);
  }

  @SafeVarargs
  private String bounds(List<String>... loops) {
    List<String> bounds = new ArrayList<>();
    for (List<String> loop : loops) {
      String edgeLoop = text.add("EDGE_LOOP('',(%s))", String.join(",", loop));
      bounds.add(text.add("FACE_BOUND('',%s,.T.)", edgeLoop));
    }
    return String.join(",", bounds);
  }

  /** A flat face by the direction out of its material. */
  @SafeVarargs
  public final void plane(Vec origin, Vec out, List<String>... loops) {
    String surface = text.add("PLANE('',%s)", text.placement(origin, out, out.square()));
    faces.add(text.add("ADVANCED_FACE('',(%s),%s,.T.)", bounds(loops), surface));
  }

  /** A cylindrical face; hollow where its material lies outside it. */
  @SafeVarargs
  public final void cylinder(
      Vec origin, Vec axis, double radius, boolean isHollow, List<String>... loops) {
    String place = text.placement(origin, axis, axis.square());
    String surface = text.add("CYLINDRICAL_SURFACE('',%s,%s)", place, text.length(radius));
    faces.add(text.add("ADVANCED_FACE('',(%s),%s,%s)", bounds(loops), surface, flag(!isHollow)));
  }

  /** A face on a B-spline surface of the first degree through a grid of points. */
  @SafeVarargs
  public final void spline(
      List<String> rows, int rowCount, int columnCount, List<String>... loops) {
    String surface =
        text.add(
            "B_SPLINE_SURFACE_WITH_KNOTS('',1,1,(%s),.UNSPECIFIED.,.F.,.F.,.F.,(%s),(%s),(%s),(%s),"
                + ".UNSPECIFIED.)",
            String.join(",", rows),
            multiplicities(rowCount),
            multiplicities(columnCount),
            knots(rowCount),
            knots(columnCount));
    faces.add(text.add("ADVANCED_FACE('',(%s),%s,.T.)", bounds(loops), surface));
  }

  private static String multiplicities(int count) {
    return "2" + ",1".repeat(count - 2) + ",2";
  }

  private static String knots(int count) {
    StringBuilder knots = new StringBuilder("0.");
    for (int i = 1; i < count; i++) {
      knots.append(',').append(i).append('.');
    }
    return knots.toString();
  }

  /** A polygon's sides in order. */
  public List<String> polygon(List<Vec> corners) {
    List<String> sides = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      sides.add(line(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return sides;
  }
}
