package drumline.drawing.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.drawing.piece.FlatForm;
import drumline.drawing.piece.FlatForm.Origin;
import org.junit.jupiter.api.Test;

/**
 * Polygons as a reader sees them, one flat in front. Source: geometry of regular polygons, as in
 * any mathematical handbook (from memory): across corners = across flats / cos(180°/n).
 */
class PolygonSilhouetteTest {

  private static FlatForm form(double acrossMm, int count) {
    return new FlatForm("f", 0, 10, acrossMm / 2, count, Origin.MILLED);
  }

  @Test
  void hexagonFromLargeBarShowsItsCorners() {
    assertThat(form(17, 6).silhouetteRMm(50)).isCloseTo(8.5 / Math.cos(Math.PI / 6), within(1e-3));
    assertThat(form(17, 6).halfWidthMm(50)).isCloseTo(8.5 / Math.sqrt(3), within(1e-9));
  }

  @Test
  void squareShowsItsFlatsAtTheTop() {
    assertThat(form(10, 4).silhouetteRMm(50)).isCloseTo(5, within(1e-3));
    assertThat(form(10, 4).halfWidthMm(50)).isCloseTo(5, within(1e-9));
  }

  @Test
  void twoFlatsLeaveTheRoundAndShowAChord() {
    assertThat(form(8, 2).silhouetteRMm(5)).isCloseTo(5, within(1e-9));
    assertThat(form(8, 2).halfWidthMm(5)).isCloseTo(3, within(1e-9));
  }

  @Test
  void flatsThatDoNotReachTheBodyLeaveItRound() {
    assertThat(form(12, 2).halfWidthMm(5)).isZero();
    assertThat(form(12, 6).silhouetteRMm(5)).isCloseTo(5, within(1e-9));
  }
}
