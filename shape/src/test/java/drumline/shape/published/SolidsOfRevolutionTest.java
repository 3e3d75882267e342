package drumline.shape.published;

import static drumline.shape.Prints.bore;
import static drumline.shape.Prints.chamfer;
import static drumline.shape.Prints.part;
import static drumline.shape.Prints.radius;
import static drumline.shape.Prints.round;
import static drumline.shape.Prints.step;
import static drumline.shape.Prints.turned;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shape.section.HalfSection;
import drumline.shape.section.PartSection;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.contour.Edge;
import drumline.shop.contour.End;
import drumline.shop.feature.Groove;
import drumline.shop.operation.CutRegion;
import drumline.shop.part.Part;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Volumes of bodies with closed formulas. Source: geometry, second theorem of Pappus and Guldin (V
 * = 2π·r̄·A), as in any mathematical handbook (from memory).
 */
class SolidsOfRevolutionTest {

  private static double volumeMm3(Part part) {
    return PartSection.of(part, round(60)).piece().volumeMm3();
  }

  @Test
  void cylinder() {
    assertThat(volumeMm3(turned(30, step("a", 0, 30, 20))))
        .isCloseTo(Math.PI * 100 * 30, within(1e-6));
  }

  @Test
  void frustumOfACone() {
    Part part = turned(30, step("a", 0, 30, 10, 20, Edge.NONE, Edge.NONE));
    assertThat(volumeMm3(part)).isCloseTo(Math.PI * 30 / 3 * (25 + 50 + 100), within(1e-5));
  }

  @Test
  void tubeOfTwoCylinders() {
    Part part =
        part(
            30,
            List.of(step("a", 0, 30, 20)),
            List.of(bore("b", End.FRONT, 0, 30, 12, Bottom.THROUGH)),
            List.of(),
            List.of());
    assertThat(volumeMm3(part)).isCloseTo(Math.PI * (100 - 36) * 30, within(1e-6));
  }

  @Test
  void drillConeOf118Degrees() {
    Part part =
        part(
            30,
            List.of(step("a", 0, 30, 20)),
            List.of(bore("b", End.FRONT, 0, 10, 8, Bottom.DRILL_POINT)),
            List.of(),
            List.of());
    double coneLengthMm = 4 / Math.tan(Math.toRadians(59));
    double roomMm3 = Math.PI * 16 * (10 + coneLengthMm / 3);
    assertThat(volumeMm3(part)).isCloseTo(Math.PI * 100 * 30 - roomMm3, within(1e-4));
  }

  @Test
  void chamferIsARingOfTriangularSection() {
    Part sharp = turned(30, step("a", 0, 30, 20));
    Part broken = turned(30, step("a", 0, 30, 20, 20, chamfer(2), Edge.NONE));
    double ringMm3 = 2 * Math.PI * (10 - 2.0 / 3) * 2;
    assertThat(volumeMm3(sharp) - volumeMm3(broken)).isCloseTo(ringMm3, within(1e-6));
  }

  @Test
  void roundedEdgeIsASquareRingWithoutAQuarterOfATorus() {
    Part sharp = turned(30, step("a", 0, 30, 20));
    Part rounded = turned(30, step("a", 0, 30, 20, 20, radius(3), Edge.NONE));
    double squareMm3 = 2 * Math.PI * (10 - 1.5) * 9;
    double quarterRMm = 7 + 4 * 3 / (3 * Math.PI);
    double quarterMm3 = 2 * Math.PI * quarterRMm * Math.PI * 9 / 4;
    assertThat(volumeMm3(sharp) - volumeMm3(rounded))
        .isCloseTo(squareMm3 - quarterMm3, within(2 * Math.PI * 10 * 4.8 * 0.001));
  }

  @Test
  void filletAtARootLeavesMaterial() {
    Part sharp = turned(30, step("a", 0, 15, 10), step("b", 15, 30, 20));
    Part filled =
        turned(
            30,
            step("a", 0, 15, 10, 10, Edge.NONE, radius(2)),
            step("b", 15, 30, 20, 20, Edge.NONE, Edge.NONE));
    double squareMm3 = 2 * Math.PI * 6 * 4;
    double quarterRMm = 7 - 4 * 2 / (3 * Math.PI);
    double quarterMm3 = 2 * Math.PI * quarterRMm * Math.PI;
    assertThat(volumeMm3(filled) - volumeMm3(sharp))
        .isCloseTo(squareMm3 - quarterMm3, within(2 * Math.PI * 7 * 3.2 * 0.001));
  }

  @Test
  void torusFromAPolygonOfManySides() {
    int count = 2000;
    List<CutRegion.PointZr> circle =
        java.util.stream.IntStream.range(0, count)
            .mapToObj(i -> 2 * Math.PI * i / count)
            .map(a -> new CutRegion.PointZr(3 * Math.cos(a), 10 + 3 * Math.sin(a)))
            .toList();
    assertThat(HalfSection.of(circle).volumeMm3())
        .isCloseTo(2 * Math.PI * Math.PI * 10 * 9, within(0.01));
  }

  @Test
  void groovesTakeTheirRings() {
    Part plain =
        part(
            30,
            List.of(step("a", 0, 30, 40)),
            List.of(bore("b", End.FRONT, 0, 30, 12, Bottom.THROUGH)),
            List.of(),
            List.of());
    Part grooved =
        part(
            30,
            plain.outside(),
            plain.frontBore(),
            List.of(),
            List.of(
                groove("o", Groove.Place.OUTSIDE, End.FRONT, 10, 2, 36, 0),
                groove("i", Groove.Place.INSIDE, End.BACK, 5, 2, 15, 0),
                groove("f", Groove.Place.FACE, End.FRONT, 20, 3, 0, 4)));
    double outsideMm3 = Math.PI * (400 - 324) * 2;
    double insideMm3 = Math.PI * (56.25 - 36) * 2;
    double faceMm3 = Math.PI * (13 * 13 - 100) * 4;
    assertThat(volumeMm3(plain) - volumeMm3(grooved))
        .isCloseTo(outsideMm3 + insideMm3 + faceMm3, within(1e-5));
  }

  private static Groove groove(
      String id,
      Groove.Place place,
      End end,
      double atMm,
      double widthMm,
      double bottomMm,
      double depthMm) {
    return new Groove(
        id,
        place,
        end,
        atMm,
        widthMm,
        bottomMm,
        depthMm,
        drumline.shape.Prints.tolerance("±0.1"),
        3.2);
  }
}
