package drumline.step.brep;

import drumline.step.space.Vec;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Pieces with flats, polygons, holes, slots and inside forms, each of known sizes. */
public final class MilledPieces {
  private static final Vec Z = new Vec(0, 0, 1);
  private static final Vec BACK = new Vec(0, 0, -1);

  private final StepText text;
  private final FaceWriter w;

  public MilledPieces(StepText.Style style) {
    this.text = new StepText(style);
    this.w = new FaceWriter(text);
  }

  private byte[] file() {
    return text.file(w.faces());
  }

  private static Vec p(double x, double y, double z) {
    return new Vec(x, y, z);
  }

  private static Vec polar(double r, double deg, double z) {
    double a = Math.toRadians(deg);
    return new Vec(r * Math.cos(a), r * Math.sin(a), z);
  }

  private List<String> circle(double r, double z, Vec axis) {
    Vec at = p(r, 0, z);
    return List.of(w.arc(at, at, p(0, 0, z), axis));
  }

  /** A band without seam between two full circles. */
  private void band(double r, double z0, double z1, boolean isHollow) {
    Vec low = isHollow ? BACK : Z;
    Vec high = isHollow ? Z : BACK;
    w.cylinder(p(0, 0, z0), Z, r, isHollow, circle(r, z0, low), circle(r, z1, high));
  }

  private static List<Vec> polygon(int sides, double across, double z) {
    List<Vec> corners = new ArrayList<>();
    double corner = across / 2 / Math.cos(Math.PI / sides);
    for (int i = 0; i < sides; i++) {
      corners.add(polar(corner, 360.0 * (i + 0.5) / sides, z));
    }
    return corners;
  }

  private static List<Vec> reversed(List<Vec> points) {
    List<Vec> back = new ArrayList<>(points);
    Collections.reverse(back);
    return back;
  }

  /** Sides of a prism; hollow ones face its middle. */
  private void prism(int sides, double across, double z0, double z1, boolean isHollow) {
    List<Vec> low = polygon(sides, across, z0);
    List<Vec> high = polygon(sides, across, z1);
    for (int i = 0; i < sides; i++) {
      int j = (i + 1) % sides;
      Vec out = polar(isHollow ? -1 : 1, 360.0 * (i + 1) / sides, 0);
      List<Vec> side = List.of(low.get(i), low.get(j), high.get(j), high.get(i));
      w.plane(low.get(i), out, w.polygon(isHollow ? reversed(side) : side));
    }
  }

  /** Polygon bar with a spigot Ø12 × 10 in front, 25 long over all. */
  public byte[] polygonBar(int sides, double across) {
    w.plane(p(0, 0, 0), BACK, circle(6, 0, BACK));
    band(6, 0, 10, false);
    w.plane(p(0, 0, 10), BACK, w.polygon(reversed(polygon(sides, across, 10))), circle(6, 10, Z));
    prism(sides, across, 10, 25, false);
    w.plane(p(0, 0, 25), Z, w.polygon(polygon(sides, across, 25)));
    return file();
  }

  /** Round Ø24 × 30 with a hexagon socket, 8 deep, in front. */
  public byte[] socket(double across) {
    w.plane(p(0, 0, 0), BACK, circle(12, 0, BACK), w.polygon(polygon(6, across, 0)));
    band(12, 0, 30, false);
    prism(6, across, 0, 8, true);
    w.plane(p(0, 0, 8), BACK, w.polygon(reversed(polygon(6, across, 8))));
    w.plane(p(0, 0, 30), Z, circle(12, 30, Z));
    return file();
  }

  /**
   * Round Ø20 × 30 with two flats 16 across from z 5 to 15, a cross hole Ø4 through at z 20, four
   * face holes Ø3 × 6 on a pitch circle of 12 in front.
   */
  public byte[] milled() {
    frontWithHoles();
    double x = Math.sqrt(100 - 64);
    flats(x);
    band(10, 0, 5, false, x);
    crossHole();
    w.plane(p(0, 0, 30), Z, circle(10, 30, Z));
    return file();
  }

  private void frontWithHoles() {
    List<List<String>> loops = new ArrayList<>();
    loops.add(circle(10, 0, BACK));
    for (int i = 0; i < 4; i++) {
      Vec c = polar(6, 90 * i + 10, 0);
      Vec from = c.plus(p(1.5, 0, 0));
      loops.add(List.of(w.arc(from, from, c, Z)));
      Vec floor = c.plus(p(0, 0, 6));
      Vec onFloor = floor.plus(p(1.5, 0, 0));
      w.cylinder(
          c,
          Z,
          1.5,
          true,
          List.of(w.arc(from, from, c, BACK)),
          List.of(w.arc(onFloor, onFloor, floor, Z)));
      w.plane(floor, BACK, List.of(w.arc(onFloor, onFloor, floor, BACK)));
    }
    @SuppressWarnings({"unchecked", "rawtypes"})
    List<String>[] all = loops.toArray(new List[0]);
    w.plane(p(0, 0, 0), BACK, all);
  }

  private void flats(double x) {
    for (int s : new int[] {1, -1}) {
      Vec a = p(s * x, s * 8, 5);
      Vec b = p(-s * x, s * 8, 5);
      Vec a1 = p(s * x, s * 8, 15);
      Vec b1 = p(-s * x, s * 8, 15);
      w.plane(a, p(0, s, 0), List.of(w.line(a, b), w.line(b, b1), w.line(b1, a1), w.line(a1, a)));
      w.plane(a, Z, List.of(w.arc(a, b, p(0, 0, 5), Z), w.line(b, a)));
      w.plane(a1, BACK, List.of(w.line(a1, b1), w.arc(b1, a1, p(0, 0, 15), BACK)));
      Vec c = p(s * x, -s * 8, 5);
      Vec c1 = p(s * x, -s * 8, 15);
      w.cylinder(
          p(0, 0, 5),
          Z,
          10,
          false,
          List.of(
              w.arc(c, a, p(0, 0, 5), Z),
              w.line(a, a1),
              w.arc(a1, c1, p(0, 0, 15), BACK),
              w.line(c1, c)));
    }
  }

  /** A band whose end with the flats is divided at their corners. */
  private void band(double r, double z0, double z1, boolean isHollow, double x) {
    w.cylinder(p(0, 0, z0), Z, r, isHollow, circle(r, z0, Z), divided(x, z1, false));
  }

  private List<String> divided(double x, double z, boolean isForward) {
    List<Vec> corners = List.of(p(x, 8, z), p(-x, 8, z), p(-x, -8, z), p(x, -8, z));
    List<String> arcs = new ArrayList<>();
    List<Vec> way = isForward ? corners : reversed(corners);
    for (int i = 0; i < 4; i++) {
      arcs.add(w.arc(way.get(i), way.get((i + 1) % 4), p(0, 0, z), isForward ? Z : BACK));
    }
    return arcs;
  }

  private void crossHole() {
    List<List<Vec>> mouths = new ArrayList<>();
    for (int s : new int[] {1, -1}) {
      List<Vec> mouth = new ArrayList<>();
      for (int i = 0; i < 72; i++) {
        double a = 2 * Math.PI * i / 72;
        double y = 2 * Math.cos(a);
        mouth.add(p(s * Math.sqrt(100 - y * y), y, 20 + 2 * Math.sin(a)));
      }
      mouths.add(mouth);
    }
    w.cylinder(
        p(0, 0, 15),
        Z,
        10,
        false,
        divided(Math.sqrt(36), 15, true),
        circle(10, 30, BACK),
        List.of(w.curve(mouths.get(0), false)),
        List.of(w.curve(mouths.get(1), true)));
    w.cylinder(
        p(0, 0, 20),
        p(1, 0, 0),
        2,
        true,
        List.of(w.curve(mouths.get(0), true)),
        List.of(w.curve(mouths.get(1), false)));
  }

  /** Round Ø20 × 30, a slot 4 wide with square ends from z 8 to 22, its floor 7.5 off the axis. */
  public byte[] slot() {
    w.plane(p(0, 0, 0), BACK, circle(10, 0, BACK));
    w.plane(p(0, 0, 30), Z, circle(10, 30, Z));
    double y = Math.sqrt(96);
    List<Vec> top = List.of(p(2, y, 8), p(-2, y, 8), p(-2, y, 22), p(2, y, 22));
    List<Vec> low = List.of(p(2, 7.5, 8), p(-2, 7.5, 8), p(-2, 7.5, 22), p(2, 7.5, 22));
    String first = w.arc(top.get(0), top.get(1), p(0, 0, 8), Z);
    List<String> mouth =
        List.of(
            first,
            w.line(top.get(1), top.get(2)),
            w.arc(top.get(2), top.get(3), p(0, 0, 22), BACK),
            w.line(top.get(3), top.get(0)));
    List<String> back =
        List.of(
            w.line(top.get(0), top.get(3)),
            w.arc(top.get(3), top.get(2), p(0, 0, 22), Z),
            w.line(top.get(2), top.get(1)),
            w.arc(top.get(1), top.get(0), p(0, 0, 8), BACK));
    w.cylinder(p(0, 0, 0), Z, 10, false, circle(10, 0, Z), circle(10, 30, BACK), back);
    w.plane(low.get(0), p(0, 1, 0), w.polygon(low));
    w.plane(
        low.get(1), p(1, 0, 0), w.polygon(List.of(low.get(1), top.get(1), top.get(2), low.get(2))));
    w.plane(
        low.get(0),
        p(-1, 0, 0),
        w.polygon(List.of(low.get(3), top.get(3), top.get(0), low.get(0))));
    w.plane(
        low.get(0),
        Z,
        List.of(
            mouth.get(0),
            w.line(top.get(1), low.get(1)),
            w.line(low.get(1), low.get(0)),
            w.line(low.get(0), top.get(0))));
    w.plane(
        low.get(2),
        BACK,
        List.of(
            w.line(low.get(3), low.get(2)),
            w.line(low.get(2), top.get(2)),
            mouth.get(2),
            w.line(top.get(3), low.get(3))));
    return file();
  }

  /** Round Ø10, 20 long, its back half one wavy face between two circles, as a modelled thread. */
  public byte[] threaded() {
    w.plane(p(0, 0, 0), BACK, circle(5, 0, BACK));
    band(5, 0, 10, false);
    w.plane(p(0, 0, 20), Z, circle(5, 20, Z));
    List<String> rows = new ArrayList<>();
    for (int i = 0; i <= 36; i++) {
      List<String> row = new ArrayList<>();
      for (int j = 0; j <= 40; j++) {
        double z = 10 + j / 4.0;
        double r = 4.6 + 0.4 * Math.cos(Math.toRadians(10 * i) - 2 * Math.PI * z / 1.5);
        row.add(text.point(polar(r, 10 * i, z)));
      }
      rows.add("(" + String.join(",", row) + ")");
    }
    w.spline(rows, 37, 41, circle(5, 10, Z), circle(5, 20, BACK));
    return file();
  }
}
