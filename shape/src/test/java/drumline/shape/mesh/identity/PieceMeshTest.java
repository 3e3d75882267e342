package drumline.shape.mesh.identity;

import static drumline.shape.Prints.bore;
import static drumline.shape.Prints.step;
import static drumline.shape.Prints.tolerance;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shape.Prints;
import drumline.shape.mesh.PieceMesh;
import drumline.shape.mesh.TriangleMesh;
import drumline.shape.section.PartSection;
import drumline.shop.contour.BoreStep;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.feature.CrossHole;
import drumline.shop.feature.FaceHoles;
import drumline.shop.feature.Feature;
import drumline.shop.feature.Flats;
import drumline.shop.feature.MilledSlot;
import drumline.shop.feature.SlottedForm;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The piece's mesh is closed, has as many holes as the piece, and its volume. */
class PieceMeshTest {
  private static final Bar ROUND = new Bar(Bar.Shape.ROUND, 26, 0, "h9", 3000);

  private static Part part(List<BoreStep> front, Feature... features) {
    List<OutsideStep> steps = List.of(step("a", 0, 30, 20));
    return Prints.part(30, steps, front, List.of(), List.of(features));
  }

  private static TriangleMesh closed(Part part, Bar bar, int holes) {
    TriangleMesh mesh = PieceMesh.of(part, bar);
    assertThat(MeshFacts.openEdges(mesh)).as("open edges of %s", part).isZero();
    assertThat(MeshFacts.holes(mesh)).as("holes through %s", part).isEqualTo(holes);
    return mesh;
  }

  /** A volume within the surface times the greatest distance of a chord. */
  private static void volume(TriangleMesh mesh, double wantedMm3) {
    double slackMm3 = mesh.areaMm2() * PieceMesh.CHORD_MM;
    assertThat(mesh.volumeMm3()).isCloseTo(wantedMm3, within(slackMm3));
  }

  private static double cylinder(double diameterMm, double lengthMm) {
    return Math.PI / 4 * diameterMm * diameterMm * lengthMm;
  }

  @Test
  void cylinderAndTube() {
    volume(closed(part(List.of()), ROUND, 0), cylinder(20, 30));
    List<BoreStep> through = List.of(bore("b", End.FRONT, 0, 30, 8, Bottom.THROUGH));
    volume(closed(part(through), ROUND, 1), cylinder(20, 30) - cylinder(8, 30));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 6, 8})
  void flatsTakeSegmentsOfTheCircle(int count) {
    double across = count < 5 ? 17 : 18.5;
    Flats flats = new Flats("f", 8, 21, across, count, Flats.Method.AUTO, tolerance("±0.1"));
    double half = Math.acos(across / 20);
    double segmentMm2 = 100 * (half - Math.sin(half) * Math.cos(half));
    double wanted = cylinder(20, 30) - count * segmentMm2 * 13;
    volume(closed(part(List.of(), flats), ROUND, 0), wanted);
  }

  @Test
  void hexagonBarKeepsItsFlats() {
    Bar bar = new Bar(Bar.Shape.HEXAGON, 22, 0, "h11", 3000);
    OutsideStep hexagon =
        new OutsideStep(
            "hex",
            12,
            30,
            22,
            22,
            OutsideStep.Surface.BAR,
            tolerance("h11"),
            3.2,
            drumline.shop.contour.Edge.NONE,
            drumline.shop.contour.Edge.NONE);
    List<OutsideStep> steps = List.of(step("a", 0, 12, 14), hexagon);
    Part part = Prints.part(30, steps, List.of(), List.of(), List.of());
    double wanted = cylinder(14, 12) + Math.sqrt(3) / 2 * 22 * 22 * 18;
    volume(closed(part, bar, 0), wanted);
  }

  /** Two cylinders crossing square share ∫ 4·√(R² − x²)·√(r² − x²) dx from −r to r. */
  private static double shared(double outerMm, double innerMm) {
    int count = 20_000;
    double sum = 0;
    for (int i = 0; i < count; i++) {
      double x = innerMm * Math.sin(Math.PI / 2 * ((i + 0.5) / count));
      double dx = innerMm * Math.cos(Math.PI / 2 * ((i + 0.5) / count)) * Math.PI / 2 / count;
      sum += 8 * Math.sqrt(outerMm * outerMm - x * x) * Math.sqrt(innerMm * innerMm - x * x) * dx;
    }
    return sum;
  }

  private static CrossHole hole(double diameterMm, double depthMm, int count, boolean isThrough) {
    CrossHole.Reach reach = isThrough ? CrossHole.Reach.THROUGH : CrossHole.Reach.ONE_SIDE;
    return new CrossHole(
        "h", 15, 33, 0, diameterMm, depthMm, count, reach, tolerance("±0.1"), null);
  }

  @Test
  void crossHolesTakeWhatTheCylindersShare() {
    TriangleMesh through = closed(part(List.of(), hole(6, 20, 1, true)), ROUND, 1);
    volume(through, cylinder(20, 30) - shared(10, 3));
    List<BoreStep> bore = List.of(bore("b", End.FRONT, 0, 30, 8, Bottom.THROUGH));
    TriangleMesh radial = closed(part(bore, hole(3, 9, 3, false)), ROUND, 4);
    double wanted = cylinder(20, 30) - cylinder(8, 30) - 1.5 * (shared(10, 1.5) - shared(4, 1.5));
    volume(radial, wanted);
  }

  @Test
  void faceHolesAreDrilledToTheirDepthWithACone() {
    FaceHoles holes = new FaceHoles("h", End.FRONT, 12, 3, 7, 4, tolerance("±0.1"), null);
    double cone = Math.PI * 1.5 * 1.5 * 1.5 / Math.tan(Math.toRadians(59)) / 3;
    double wanted = cylinder(20, 30) - 4 * (cylinder(3, 7) + cone);
    volume(closed(part(List.of(), holes), ROUND, 0), wanted);
  }

  @Test
  void slotsAndInsideForms() {
    MilledSlot slot =
        new MilledSlot("s", MilledSlot.Place.FRONT_FACE, 0, 4, 5, 20, 1, tolerance("±0.1"));
    double half = Math.asin(2.0 / 10);
    double stripMm2 = 2 * 100 * (half + Math.sin(half) * Math.cos(half));
    volume(closed(part(List.of(), slot), ROUND, 0), cylinder(20, 30) - 5 * stripMm2);
    List<BoreStep> bore = List.of(bore("b", End.FRONT, 0, 20, 8, Bottom.FLAT));
    SlottedForm hexagon =
        new SlottedForm(
            "x", End.FRONT, SlottedForm.Form.HEXAGON, 8.1, 0.6, 10, 8, tolerance("±0.1"));
    double wanted =
        cylinder(20, 30) - cylinder(8, 20) - 10 * (Math.sqrt(3) / 2 * 8.1 * 8.1 - cylinder(8, 1));
    volume(closed(part(bore, hexagon), ROUND, 0), wanted);
  }

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void anyPieceIsClosed(long seed) {
    Random random = new Random(seed);
    List<OutsideStep> steps = new ArrayList<>();
    double z = 0;
    for (int i = 0; i < 1 + random.nextInt(4); i++) {
      double to = z + 5 + random.nextInt(8);
      steps.add(step("o" + i, z, to, 16 + random.nextInt(9)));
      z = to;
    }
    List<BoreStep> bore = List.of(bore("b", End.FRONT, 0, z, 6, Bottom.THROUGH));
    List<Feature> features = new ArrayList<>();
    double at = 2 + random.nextDouble() * (z - 4);
    features.add(
        new Flats("f", 0, at, 15.5, 1 + random.nextInt(6), Flats.Method.AUTO, tolerance("±0.1")));
    CrossHole.Reach reach = CrossHole.Reach.ONE_SIDE;
    for (int i = 0; i < 2; i++) {
      features.add(
          new CrossHole(
              "h" + i,
              2 + random.nextDouble() * (z - 4),
              random.nextInt(360),
              random.nextInt(20) - 10,
              1.5 + random.nextDouble(),
              4 + random.nextInt(5),
              1 + random.nextInt(3),
              reach,
              tolerance("±0.1"),
              null));
    }
    Part part = Prints.part(z, steps, bore, List.of(), features);
    TriangleMesh mesh = PieceMesh.of(part, ROUND);
    assertThat(MeshFacts.openEdges(mesh)).as("seed %d", seed).isZero();
    assertThat(mesh.volumeMm3()).isLessThan(PartSection.of(part, ROUND).piece().volumeMm3());
  }
}
