package drumline.drawing;

import drumline.shop.contour.BoreStep;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.contour.Edge;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.contour.OutsideStep.Surface;
import drumline.shop.contour.Relation;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.Flats;
import drumline.shop.feature.Groove;
import drumline.shop.feature.Knurl;
import drumline.shop.feature.ScrewThread;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.thread.ThreadSize;
import drumline.shop.thread.ThreadSystem;
import drumline.shop.tolerance.Tolerance;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Invented prints to draw. */
public final class Pieces {

  public static final Tolerance GENERAL = tolerance("ISO 2768-m", -0.1, 0.1);

  private Pieces() {}

  public static Tolerance tolerance(String text, double lowerMm, double upperMm) {
    return new Tolerance(text, lowerMm, upperMm, OptionalInt.empty());
  }

  public static ThreadSize thread(String designation, double majorMm, double pitchMm) {
    double depthMm = 0.6134 * pitchMm;
    return new ThreadSize(
        designation,
        ThreadSystem.METRIC,
        ThreadSize.ThreadHand.RIGHT,
        "6g/6H",
        majorMm,
        pitchMm,
        majorMm - depthMm,
        majorMm - 2 * depthMm,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new ThreadSize.ThreadStart(
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()));
  }

  private static Edge chamfer(double sizeMm) {
    return new Edge(Edge.Kind.CHAMFER, sizeMm, 45);
  }

  private static OutsideStep step(
      String id, double fromMm, double toMm, double diaMm, Tolerance tol, double ra, Edge edge) {
    return new OutsideStep(
        id, fromMm, toMm, diaMm, diaMm, Surface.TURNED, tol, ra, edge, Edge.NONE);
  }

  private static BoreStep bore(
      String id, End end, double from, double to, double dia, Tolerance tol, Edge edge, Bottom b) {
    return new BoreStep(id, end, from, to, dia, dia, tol, 3.2, edge, b);
  }

  public static Bar stainlessBar() {
    return new Bar(Bar.Shape.ROUND, 22, 0, "h9", 3000);
  }

  public static Part stainlessBody() {
    Tolerance h7 = tolerance("h7", -0.018, 0);
    Tolerance h8 = tolerance("H8", 0, 0.022);
    Edge fillet = new Edge(Edge.Kind.RADIUS, 0.4, 45);
    OutsideStep neck =
        new OutsideStep("o5", 30, 36, 14, 18, Surface.TURNED, GENERAL, 3.2, Edge.NONE, Edge.NONE);
    OutsideStep seat =
        new OutsideStep("o2", 10, 18, 15, 15, Surface.TURNED, h7, 0.8, Edge.NONE, fillet);
    OutsideStep last =
        new OutsideStep(
            "o6", 36, 42, 18, 18, Surface.TURNED, GENERAL, 3.2, Edge.NONE, chamfer(0.5));
    return new Part(
        "Valve body 4 mm seat",
        42,
        tolerance("±0.1", -0.1, 0.1),
        3.2,
        3.2,
        List.of(
            step("o1", 0, 10, 12, GENERAL, 3.2, chamfer(1)),
            seat,
            step("o3", 18, 24, 21, GENERAL, 3.2, chamfer(0.5)),
            step("o4", 24, 30, 14, GENERAL, 3.2, Edge.NONE),
            neck,
            last),
        List.of(
            bore("f1", End.FRONT, 0, 9, 7, h8, chamfer(0.5), Bottom.FLAT),
            bore("f2", End.FRONT, 9, 26, 4, GENERAL, Edge.NONE, Bottom.THROUGH)),
        List.of(
            bore("b1", End.BACK, 0, 10, 10.2, GENERAL, chamfer(1), Bottom.FLAT),
            bore("b2", End.BACK, 10, 16, 6, h8, Edge.NONE, Bottom.DRILL_POINT)),
        List.of(
            new ScrewThread(
                "t1", "o1", thread("M12 × 1 – 6g", 12, 1), 7.5, ScrewThread.Method.AUTO),
            new ScrewThread("t2", "b1", thread("M12 × 1.75", 12, 1.75), 8, ScrewThread.Method.AUTO),
            new Groove("g1", Groove.Place.OUTSIDE, End.FRONT, 8.5, 1.5, 10.4, 0, GENERAL, 3.2),
            new Groove("g2", Groove.Place.INSIDE, End.FRONT, 5, 1.2, 8, 0, GENERAL, 3.2),
            new Groove("g3", Groove.Place.OUTSIDE, End.FRONT, 13, 1.9, 12.2, 0, h7, 1.6),
            new Flats("fl", 24, 29, 12, 2, Flats.Method.AUTO, tolerance("h11", -0.11, 0)),
            new CrossHole(
                "c1", 33, 0, 0, 2, 9, 4, CrossHole.Reach.ONE_SIDE, tolerance("H12", 0, 0.1), null)),
        List.of(new Relation(Relation.Kind.RUNOUT, "o2", "f1", 0.02)));
  }

  public static Bar hexagonBar() {
    return new Bar(Bar.Shape.HEXAGON, 19, 0, "h11", 3000);
  }

  public static Part brassNipple() {
    Edge thirty = new Edge(Edge.Kind.CHAMFER, 1.2, 60);
    OutsideStep hexagon =
        new OutsideStep(
            "o2",
            14,
            22,
            hexagonBar().acrossCornersMm(),
            hexagonBar().acrossCornersMm(),
            Surface.BAR,
            tolerance("h11", -0.13, 0),
            3.2,
            new Edge(Edge.Kind.CHAMFER, 0.6, 60),
            new Edge(Edge.Kind.CHAMFER, 0.6, 60));
    OutsideStep hose =
        new OutsideStep(
            "o3",
            22,
            34,
            13,
            10,
            Surface.TURNED,
            tolerance("±0.05", -0.05, 0.05),
            1.6,
            Edge.NONE,
            Edge.NONE);
    return new Part(
        "Hose nipple <G 3/8 & Ø13>",
        34,
        tolerance("±0.2", -0.2, 0.2),
        3.2,
        3.2,
        List.of(step("o1", 0, 14, 16.662, GENERAL, 3.2, thirty), hexagon, hose),
        List.of(
            bore("f1", End.FRONT, 0, 4, 11, GENERAL, chamfer(0.5), Bottom.DRILL_POINT),
            bore("f2", End.FRONT, 4, 34, 7, GENERAL, Edge.NONE, Bottom.THROUGH)),
        List.of(),
        List.of(
            new ScrewThread(
                "t1", "o1", thread("G 3/8 A", 16.662, 1.337), 11, ScrewThread.Method.AUTO),
            new Groove("g1", Groove.Place.OUTSIDE, End.FRONT, 12, 2, 14.6, 0, GENERAL, 3.2)),
        List.of());
  }

  public static Part sleeve() {
    return new Part(
        "Plain sleeve",
        20,
        tolerance("±0.1", -0.1, 0.1),
        1.6,
        1.6,
        List.of(
            new OutsideStep(
                "o1",
                0,
                20,
                26,
                26,
                Surface.TURNED,
                tolerance("+0.02/-0.01", -0.01, 0.02),
                1.6,
                chamfer(0.5),
                chamfer(0.5))),
        List.of(
            bore(
                "f1",
                End.FRONT,
                0,
                20,
                20,
                tolerance("H7", 0, 0.021),
                chamfer(0.5),
                Bottom.THROUGH)),
        List.of(),
        List.of(),
        List.of());
  }

  public static Bar sleeveBar() {
    return new Bar(Bar.Shape.ROUND, 28, 0, "h11", 3000);
  }

  public static Part knurledKnob() {
    return new Part(
        "Knurled knob",
        26,
        GENERAL,
        3.2,
        3.2,
        List.of(
            step("o1", 0, 12, 24, GENERAL, 3.2, chamfer(1)),
            step("o2", 12, 20, 16, GENERAL, 3.2, Edge.NONE),
            step("o3", 20, 26, 10, tolerance("f7", -0.028, -0.013), 1.6, Edge.NONE)),
        List.of(),
        List.of(bore("b1", End.BACK, 0, 14, 5, GENERAL, chamfer(0.5), Bottom.DRILL_POINT)),
        List.of(
            new Knurl("k1", "o1", 1.5, 10.5, 0.8, Knurl.Form.DIAMOND),
            new ScrewThread("t1", "b1", thread("M6", 6, 1), 10, ScrewThread.Method.AUTO),
            new Flats("fl", 13, 20, 13, 6, Flats.Method.AUTO, GENERAL)),
        List.of());
  }
}
