package drumline.shop.standard.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shop.quantity.FigureTable;
import drumline.shop.standard.BarFinish;
import drumline.shop.standard.BarSection;
import drumline.shop.standard.BarTolerance;
import drumline.shop.standard.CentreHole;
import drumline.shop.standard.Keyway;
import drumline.shop.tolerance.Tolerance;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Compares bar tolerances, keyways and centre holes with open pages; the files name them. */
class StandardPagesTest {

  static List<FigureTable.Row> keyways() {
    return FigureTable.read(StandardPagesTest.class, "keyway-pages.csv").rows();
  }

  static List<FigureTable.Row> bars() {
    return FigureTable.read(StandardPagesTest.class, "bar-pages.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("keyways")
  void keywaysAreThePrintedOnes(FigureTable.Row row) {
    Keyway keyway = Keyway.findForShaft(row.figure("shaft_mm")).orElseThrow();

    assertThat(keyway.widthMm()).as(row.place()).isEqualTo(row.figure("width_mm"));
    assertThat(keyway.keyHeightMm()).as(row.place()).isEqualTo(row.figure("height_mm"));
    assertThat(keyway.shaftDepthMm()).as(row.place()).isEqualTo(row.figure("shaft_depth_mm"));
    assertThat(keyway.hubDepthMm()).as(row.place()).isEqualTo(row.figure("hub_depth_mm"));
  }

  static List<FigureTable.Row> centreHoles() {
    return FigureTable.read(StandardPagesTest.class, "centre-hole-pages.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("centreHoles")
  void centreHolesAreThePrintedOnes(FigureTable.Row row) {
    double pilotMm = row.figure("pilot_mm");
    CentreHole plain = CentreHole.find(CentreHole.Form.A, pilotMm).orElseThrow();
    CentreHole guarded = CentreHole.find(CentreHole.Form.B, pilotMm).orElseThrow();

    assertThat(plain.mouthMm()).as(row.place()).isEqualTo(row.figure("cone_mm"));
    assertThat(guarded.coneMm()).as(row.place()).isEqualTo(row.figure("cone_mm"));
    assertThat(guarded.mouthMm()).as(row.place()).isEqualTo(row.figure("guard_mm"));
  }

  @ParameterizedTest
  @MethodSource("bars")
  void barTolerancesAreThePrintedOnes(FigureTable.Row row) {
    BarSection section = BarSection.valueOf(row.text("section"));
    BarFinish finish = BarFinish.valueOf(row.text("finish"));
    double sizeMm = row.figure("size_mm");

    int grade = BarTolerance.findUsualGrade(section, finish, sizeMm).orElseThrow();
    Tolerance tolerance = BarTolerance.find(section, finish, sizeMm, grade).orElseThrow();

    assertThat((double) grade).as(row.place()).isEqualTo(row.figure("usual_grade"));
    assertThat(tolerance.upperDeviationMm()).as(row.place()).isZero();
    assertThat(tolerance.lowerDeviationMm() * 1000)
        .as(row.place())
        .isCloseTo(-row.figure("below_um"), within(1e-9));
  }
}
