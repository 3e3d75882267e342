package drumline.shape.identity;

import static drumline.shape.Prints.bore;
import static drumline.shape.Prints.chamfer;
import static drumline.shape.Prints.part;
import static drumline.shape.Prints.round;
import static drumline.shape.Prints.step;
import static drumline.shape.Prints.turned;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumline.shape.section.BarSection;
import drumline.shape.section.HalfSection;
import drumline.shape.section.PartSection;
import drumline.shop.contour.BoreStep.Bottom;
import drumline.shop.contour.Edge;
import drumline.shop.contour.End;
import drumline.shop.contour.OutsideStep;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Edges of what a section can be, and its messages. */
class SectionLimitsTest {

  @Test
  void boresFromBothEndsThatMeetLeaveNoSkin() {
    Part part =
        part(
            30.1,
            List.of(step("a", 0, 30.1, 20)),
            List.of(bore("f", End.FRONT, 0, 10.1, 12, Bottom.THROUGH)),
            List.of(bore("b", End.BACK, 0, 20, 8, Bottom.THROUGH)),
            List.of());
    assertThat(PartSection.of(part, round(20)).piece().innerRMm()).isEqualTo(4, within(1e-9));
  }

  @Test
  void anEdgeThatDoesNotFitIsToldAndDrawnSharp() {
    Part part = turned(20, step("a", 0, 10, 10), step("b", 10, 20, 12, 12, chamfer(2), Edge.NONE));
    PartSection section = PartSection.of(part, round(20));
    assertThat(section.problems()).hasSize(1);
    assertThat(section.problems().get(0).toLine())
        .isEqualTo(
            "warning: b: chamfer of 2.000 mm at z 10.000 mm, Ø12.000 mm; allowed: at most 1.000 mm"
                + " here. Maybe the edge belongs to the other end of the step.");
    assertThat(section.piece().volumeMm3()).isCloseTo(Math.PI * 610, within(1e-6));
  }

  @Test
  void hexagonStandsAcrossCorners() {
    Bar hexagon = new Bar(Bar.Shape.HEXAGON, 17, 0, "h11", 3000);
    OutsideStep turned = step("a", 0, 10, 17);
    OutsideStep skin =
        new OutsideStep(
            "a",
            0,
            10,
            17,
            17,
            OutsideStep.Surface.BAR,
            turned.tolerance(),
            3.2,
            Edge.NONE,
            Edge.NONE);
    HalfSection piece = PartSection.of(turned(10, skin), hexagon).piece();
    assertThat(piece.outerRMm()).isEqualTo(17 / Math.sqrt(3), within(1e-6));
    assertThat(BarSection.findFlatsRMm(hexagon)).contains(8.5);
    assertThat(BarSection.note(hexagon))
        .isEqualTo("hexagon bar 17.00 mm across flats, drawn at its 19.63 mm across corners");
  }

  @Test
  void whatIsSweptBelowTheAxisDoesNotCount() {
    HalfSection swept = HalfSection.of(CutRegion.rectangle(0, 2, -0.5, 5));
    assertThat(swept.areaMm2()).isCloseTo(10, within(1e-9));
  }

  @Test
  void brokenOutlinesAreRefusedWithTheirValue() {
    assertThatThrownBy(() -> HalfSection.of(List.of(new PointZr(0, 0), new PointZr(1, 0))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("outline: 2 corners, allowed: at least 3");
    assertThatThrownBy(() -> HalfSection.of(CutRegion.rectangle(0, Double.NaN, 0, 1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("NaN")
        .hasMessageEndingWith("allowed: finite numbers");
    assertThatThrownBy(() -> PartSection.of(turned(9, step("a", 0, 9, 5)), round(6), 180))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("pointAngleDeg: 180.0, allowed: greater than 0, less than 180");
  }
}
