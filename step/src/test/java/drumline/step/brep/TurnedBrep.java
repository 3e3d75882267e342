package drumline.step.brep;

import static drumline.step.brep.StepText.flag;
import static drumline.step.brep.StepText.real;

import drumline.step.space.Vec;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;

/** Turns a half-section around the z axis into faces with edges and vertices. */
public final class TurnedBrep {
  private final StepText text;
  private final int split;
  private final Surfaces surfaces;
  private final Random random;
  private final double turn;
  private final Map<String, String> made = new HashMap<>();

  /** Forms in which turned faces are written. */
  public enum Surfaces {
    ANALYTIC,
    REVOLUTION,
    SPLINE,
    MIXED
  }

  /**
   * A writer.
   *
   * @param split faces that each piece of the half-section becomes: 1, 2 or 4
   */
  public TurnedBrep(StepText text, int split, Surfaces surfaces, Random random) {
    this.text = text;
    this.split = split;
    this.surfaces = surfaces;
    this.random = random;
    this.turn = random.nextDouble() * Math.PI;
  }

  /** The faces of a half-section that begins and ends on the axis, or is closed. */
  public List<String> faces(List<Line> section) {
    List<String> faces = new ArrayList<>();
    for (Line line : section) {
      for (int j = 0; j < split; j++) {
        faces.add(face(line, j));
      }
    }
    return faces;
  }

  private double angle(int j) {
    return turn + 2 * Math.PI * (j % split) / split;
  }

  static Vec at(double z, double r, double angle) {
    return new Vec(r * Math.cos(angle), r * Math.sin(angle), z);
  }

  private String vertex(double z, double r, int j) {
    int own = r < 1e-9 ? 0 : j % split;
    return once(key("v", z, r, own), () -> text.vertex(at(z, r, angle(own))));
  }

  private String once(String key, Supplier<String> maker) {
    String known = made.get(key);
    if (known == null) {
      known = maker.get();
      made.put(key, known);
    }
    return known;
  }

  private static String key(String kind, double z, double r, int j) {
    return kind + Math.round(z * 1e6) + "/" + Math.round(r * 1e6) + "/" + j;
  }

  private String circleEdge(double z, double r, int j) {
    return once(
        key("c", z, r, j),
        () -> {
          String place = text.placement(new Vec(0, 0, z), new Vec(0, 0, 1), new Vec(1, 0, 0));
          String circle = text.add("CIRCLE('',%s,%s)", place, text.length(r));
          if (random.nextInt(4) == 0) {
            circle = text.add("SURFACE_CURVE('',%s,(),.CURVE_3D.)", circle);
          }
          return edge(vertex(z, r, j), vertex(z, r, j + 1), circle, true);
        });
  }

  private String edge(String from, String to, String curve, boolean isSame) {
    return text.add("EDGE_CURVE('',%s,%s,%s,%s)", from, to, curve, flag(isSame));
  }

  private String meridianEdge(Line line, int j) {
    String kind = "m" + Math.round(line.z1() * 1e6) + "/" + Math.round(line.r1() * 1e6) + "/";
    return once(
        key(kind, line.z0(), line.r0(), j % split),
        () ->
            edge(
                vertex(line.z0(), line.r0(), j),
                vertex(line.z1(), line.r1(), j),
                meridian(line, angle(j)),
                line.arc() == null || line.isLeft()));
  }

  /** The curve of a piece at an angle. */
  private String meridian(Line line, double angle) {
    if (line.arc() == null) {
      return text.line(at(line.z0(), line.r0(), angle), at(line.z1(), line.r1(), angle));
    }
    Vec around = new Vec(-Math.sin(angle), Math.cos(angle), 0);
    Vec centre = at(line.arc().get(0), line.arc().get(1), angle);
    String place = text.placement(centre, around, new Vec(0, 0, 1));
    return text.add("CIRCLE('',%s,%s)", place, text.length(line.radius()));
  }

  private String oriented(String edge, boolean isForward) {
    return text.add("ORIENTED_EDGE('',*,*,%s,%s)", edge, flag(isForward));
  }

  private String face(Line line, int j) {
    boolean tipFirst = line.r0() < 1e-9;
    boolean tipLast = line.r1() < 1e-9;
    boolean isRing = split == 1 && line.arc() == null && line.z0() == line.z1();
    List<String> bounds = new ArrayList<>();
    if (isRing) {
      if (!tipFirst) {
        bounds.add(bound(List.of(oriented(circleEdge(line.z0(), line.r0(), j), true))));
      }
      if (!tipLast) {
        bounds.add(bound(List.of(oriented(circleEdge(line.z1(), line.r1(), j), false))));
      }
    } else {
      List<String> loop = new ArrayList<>();
      if (!tipFirst) {
        loop.add(oriented(circleEdge(line.z0(), line.r0(), j), true));
      }
      loop.add(oriented(meridianEdge(line, j + 1), true));
      if (!tipLast) {
        loop.add(oriented(circleEdge(line.z1(), line.r1(), j), false));
      }
      loop.add(oriented(meridianEdge(line, j), false));
      bounds.add(bound(loop));
    }
    String[] surface = surface(line, j);
    return text.add(
        "ADVANCED_FACE('',(%s),%s,%s)", String.join(",", bounds), surface[0], surface[1]);
  }

  private String bound(List<String> edges) {
    String loop = text.add("EDGE_LOOP('',(%s))", String.join(",", edges));
    return text.add("FACE_OUTER_BOUND('',%s,.T.)", loop);
  }

  private String[] surface(Line line, int j) {
    Surfaces form =
        surfaces == Surfaces.MIXED ? List.of(Surfaces.values()).get(random.nextInt(3)) : surfaces;
    boolean isFlat = line.arc() == null && line.z0() == line.z1();
    if (form == Surfaces.ANALYTIC || (isFlat && form == Surfaces.REVOLUTION)) {
      return analytic(line);
    }
    if (form == Surfaces.REVOLUTION) {
      String curve = meridian(line, angle(j) + 0.3);
      String surface =
          text.add(
              "SURFACE_OF_REVOLUTION('',%s,%s)",
              curve, text.axis1(new Vec(0, 0, -3), new Vec(0, 0, 1)));
      return new String[] {surface, flag(line.arc() == null || line.isLeft())};
    }
    return new String[] {spline(line, j), ".T."};
  }

  private String[] analytic(Line line) {
    Vec z = new Vec(0, 0, random.nextBoolean() ? 1 : -1);
    double dz = line.z1() - line.z0();
    double dr = line.r1() - line.r0();
    if (line.arc() != null) {
      boolean isBall = Math.abs(line.arc().get(1)) < 1e-9;
      String place = text.placement(new Vec(0, 0, line.arc().get(0)), z, new Vec(1, 0, 0));
      String surface =
          isBall
              ? text.add("SPHERICAL_SURFACE('',%s,%s)", place, text.length(line.radius()))
              : text.add(
                  "TOROIDAL_SURFACE('',%s,%s,%s)",
                  place, text.length(line.arc().get(1)), text.length(line.radius()));
      return new String[] {surface, flag(!line.isLeft())};
    }
    if (dz == 0) {
      String place = text.placement(new Vec(1, 2, line.z0()), z, new Vec(0, 1, 0));
      return new String[] {text.add("PLANE('',%s)", place), flag(-dr * z.z() > 0)};
    }
    if (dr == 0) {
      String place = text.placement(new Vec(0, 0, line.z0() - 5), z, new Vec(1, 0, 0));
      String surface = text.add("CYLINDRICAL_SURFACE('',%s,%s)", place, text.length(line.r0()));
      return new String[] {surface, flag(dz > 0)};
    }
    Vec grow = new Vec(0, 0, dz * dr > 0 ? 1 : -1);
    boolean isFirst = line.r0() < line.r1();
    double origin = isFirst ? line.z0() : line.z1();
    String place = text.placement(new Vec(0, 0, origin), grow, new Vec(1, 0, 0));
    double half = Math.atan2(Math.abs(dr), Math.abs(dz));
    String surface =
        text.add(
            "CONICAL_SURFACE('',%s,%s,%s)",
            place, text.length(Math.min(line.r0(), line.r1())), text.angle(half));
    return new String[] {surface, flag(dz > 0)};
  }

  /** A rational B-spline surface: around by arcs of a quarter or less, along by line or arc. */
  private String spline(Line line, int j) {
    int pieces = 4 / split;
    double step = Math.PI / 2;
    List<double[]> along = new ArrayList<>();
    along.add(new double[] {line.z0(), line.r0(), 1});
    if (line.arc() != null) {
      along.add(middle(line));
    }
    along.add(new double[] {line.z1(), line.r1(), 1});
    List<String> rows = new ArrayList<>();
    List<String> weightRows = new ArrayList<>();
    for (int k = 0; k <= 2 * pieces; k++) {
      double a = angle(j) + k * step / 2;
      double w = k % 2 == 1 ? Math.cos(step / 2) : 1;
      List<String> row = new ArrayList<>();
      List<String> weights = new ArrayList<>();
      for (double[] p : along) {
        row.add(text.point(at(p[0], p[1] / w, a)));
        weights.add(real(w * p[2]));
      }
      rows.add("(" + String.join(",", row) + ")");
      weightRows.add("(" + String.join(",", weights) + ")");
    }
    StringBuilder mults = new StringBuilder("(3");
    StringBuilder knots = new StringBuilder("(0.");
    for (int k = 1; k <= pieces; k++) {
      mults.append(k == pieces ? ",3" : ",2");
      knots.append(",").append(real(k));
    }
    int degree = along.size() - 1;
    String ends = degree == 1 ? "(2,2)" : "(3,3)";
    return text.add(
        "(BOUNDED_SURFACE() B_SPLINE_SURFACE(2,%d,(%s),.UNSPECIFIED.,.F.,.F.,.F.)"
            + " B_SPLINE_SURFACE_WITH_KNOTS(%s,%s,%s,(0.,1.),.UNSPECIFIED.)"
            + " GEOMETRIC_REPRESENTATION_ITEM() RATIONAL_B_SPLINE_SURFACE((%s))"
            + " REPRESENTATION_ITEM('') SURFACE())",
        degree,
        String.join(",", rows),
        mults + ")",
        ends,
        knots + ")",
        String.join(",", weightRows));
  }

  /** Middle control point (z, r, weight) of an arc of less than half a turn. */
  private static double[] middle(Line line) {
    double mz = (line.z0() + line.z1()) / 2 - line.arc().get(0);
    double mr = (line.r0() + line.r1()) / 2 - line.arc().get(1);
    double d = Math.hypot(mz, mr);
    double radius = line.radius();
    double out = radius * radius / d;
    return new double[] {
      line.arc().get(0) + mz / d * out, line.arc().get(1) + mr / d * out, d / radius
    };
  }
}
