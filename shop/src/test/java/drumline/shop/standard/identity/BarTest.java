package drumline.shop.standard.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumline.shop.standard.BarFinish;
import drumline.shop.standard.BarSection;
import drumline.shop.standard.BarTolerance;
import org.junit.jupiter.api.Test;

/** Bar geometry against polygons built corner by corner, and what the standard does not make. */
class BarTest {

  @Test
  void cornersAndAreaAreThoseOfThePolygonBuiltCornerByCorner() {
    assertPolygon(BarSection.HEXAGON, 6, 17);
    assertPolygon(BarSection.SQUARE, 4, 17);
    assertPolygon(BarSection.ROUND, 100_000, 17);
  }

  private static void assertPolygon(BarSection section, int sides, double flatsMm) {
    double radiusMm = flatsMm / 2 / Math.cos(Math.PI / sides);
    double twiceArea = 0;
    for (int i = 0; i < sides; i++) {
      double x1 = radiusMm * Math.cos(2 * Math.PI * i / sides);
      double y1 = radiusMm * Math.sin(2 * Math.PI * i / sides);
      double x2 = radiusMm * Math.cos(2 * Math.PI * (i + 1) / sides);
      double y2 = radiusMm * Math.sin(2 * Math.PI * (i + 1) / sides);
      twiceArea += x1 * y2 - x2 * y1;
    }
    assertThat(section.acrossCornersMm(flatsMm)).isCloseTo(2 * radiusMm, within(1e-6));
    assertThat(section.areaMm2(flatsMm)).isCloseTo(twiceArea / 2, within(1e-4));
  }

  @Test
  void aHexagonOf24PassesASpindleBoreOf28() {
    // s 24 mm: 27.713 mm across sharp corners, as hexagon bar tables print it.
    assertThat(BarSection.HEXAGON.acrossCornersMm(24)).isCloseTo(27.713, within(0.0005));
  }

  @Test
  void noBarIsMadeFinerThanItsFinishAllows() {
    assertThat(BarTolerance.find(BarSection.ROUND, BarFinish.DRAWN, 26, 8)).isEmpty();
    assertThat(BarTolerance.find(BarSection.ROUND, BarFinish.GROUND, 26, 6)).isPresent();
    assertThat(BarTolerance.find(BarSection.HEXAGON, BarFinish.DRAWN, 26, 10)).isEmpty();
    assertThat(BarTolerance.find(BarSection.HEXAGON, BarFinish.GROUND, 26, 11)).isEmpty();
    assertThat(BarTolerance.findUsualGrade(BarSection.ROUND, BarFinish.POLISHED, 26)).isEmpty();
    assertThat(BarTolerance.findUsualGrade(BarSection.ROUND, BarFinish.DRAWN, 200.1)).isEmpty();
    assertThat(BarTolerance.findUsualGrade(BarSection.ROUND, BarFinish.DRAWN, Double.NaN))
        .isEmpty();
  }

  @Test
  void refusesASizeThatIsNone() {
    assertThatThrownBy(() -> BarSection.SQUARE.acrossCornersMm(0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("sizeMm is 0.0; allowed: above 0");
    assertThatThrownBy(() -> BarSection.SQUARE.areaMm2(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("sizeMm is NaN; allowed: above 0");
  }
}
