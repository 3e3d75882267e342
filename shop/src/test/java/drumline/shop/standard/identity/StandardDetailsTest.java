package drumline.shop.standard.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shop.quantity.FigureTable;
import drumline.shop.standard.CentreHole;
import drumline.shop.standard.CentreHole.Form;
import drumline.shop.standard.Keyway;
import drumline.shop.standard.Keyway.Place;
import drumline.shop.standard.Keyway.Seat;
import drumline.shop.standard.ThreadRelief;
import drumline.shop.standard.ThreadRelief.Room;
import drumline.shop.thread.ThreadCatalogue;
import drumline.shop.thread.ThreadSize;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Tables from memory must at least follow the rules their figures were made by. */
class StandardDetailsTest {

  static List<FigureTable.Row> reliefs() {
    return FigureTable.read(ThreadRelief.class, "thread-reliefs.csv").rows();
  }

  static List<String> metricThreads() {
    return ThreadCatalogue.designations().stream().filter(d -> d.startsWith("M")).toList();
  }

  @ParameterizedTest
  @MethodSource("reliefs")
  void reliefWidthsAreMultiplesOfThePitch(FigureTable.Row row) {
    double pitchMm = row.figure("pitch_mm");
    assertShare(row, "a_max_mm", 3.5 * pitchMm);
    assertShare(row, "b_max_mm", 2.5 * pitchMm);
    assertShare(row, "c_min_mm", 4 * pitchMm);
    assertShare(row, "d_min_mm", 2.5 * pitchMm);
    assertThat(row.figure("a_min_mm")).isLessThan(row.figure("a_max_mm"));
    assertThat(row.figure("b_min_mm")).isLessThan(row.figure("a_min_mm"));
    assertThat(row.figure("c_min_mm")).isLessThan(row.figure("c_max_mm"));
    assertThat(row.figure("d_max_mm")).isLessThan(row.figure("c_max_mm"));
    assertThat(row.figure("blind_mm") / pitchMm).as(row.place()).isBetween(4.0, 6.6);
  }

  private static void assertShare(FigureTable.Row row, String column, double ruleMm) {
    assertThat(row.figure(column))
        .as("%s %s", row.place(), column)
        .isCloseTo(ruleMm, within(0.05 * ruleMm));
  }

  @ParameterizedTest
  @MethodSource("metricThreads")
  void theGrooveIsClearOfTheThread(String designation) {
    ThreadSize thread = ThreadCatalogue.find(designation).orElseThrow();
    double majorMm = thread.majorMm();
    double pitchMm = thread.pitchMm();
    // [ISO-68-1]: root of an external thread with a rounded root, d3 = d - 1.226869 P.
    double rootMm = majorMm - 1.226869 * pitchMm;

    var external = ThreadRelief.findExternal(majorMm, pitchMm, Room.REGULAR).orElseThrow();
    var internal = ThreadRelief.findInternal(majorMm, pitchMm, Room.SHORT).orElseThrow();

    assertThat(external.form()).isEqualTo('A');
    assertThat(external.diameterMm()).as(designation).isLessThan(rootMm);
    assertThat(internal.form()).isEqualTo('D');
    assertThat(internal.diameterMm()).as(designation).isGreaterThan(majorMm);
  }

  @Test
  void anM10HasTheGrooveEveryDraughtsmanKnows() {
    // M10, DIN 76-A: 7.7 mm, from memory of [DIN-76-1] 2004, table 1.
    assertThat(ThreadRelief.findExternal(10, 1.5, Room.REGULAR))
        .contains(new ThreadRelief('A', 7.7, 3.2, 5.2, 0.8));
    assertThat(ThreadRelief.findBlindOverrunMm(1.5)).hasValue(7.3);
    assertThat(ThreadRelief.findExternal(10, 1.3, Room.REGULAR)).isEmpty();
    assertThat(ThreadRelief.findExternal(0.3, 0.2, Room.REGULAR)).isEmpty();
  }

  @Test
  void centreHolesGrowInEvenSteps() {
    List<FigureTable.Row> rows = FigureTable.read(CentreHole.class, "centre-holes.csv").rows();
    for (FigureTable.Row row : rows) {
      double pilotMm = row.figure("pilot_mm");
      assertThat(row.figure("cone_mm") / pilotMm).as(row.place()).isBetween(2.09, 2.13);
      assertThat(row.figure("guard_mm") / pilotMm).as(row.place()).isBetween(2.79, 3.21);
    }
  }

  @Test
  void aCentreHoleIsFoundByItsName() {
    CentreHole hole = CentreHole.find("ISO 6411-B4/12.5").orElseThrow();

    assertThat(hole).isEqualTo(new CentreHole(Form.B, 4, 8.5, 12.5));
    assertThat(hole.coneDepthMm()).isCloseTo(2.25 * Math.sqrt(3), within(1e-12));
    assertThat(CentreHole.find("A 10/21.2")).isPresent();
    assertThat(CentreHole.find("A4/12.5")).isEmpty();
    assertThat(CentreHole.find(Form.A, 3)).isEmpty();
  }

  @Test
  void aKeyHasClearanceAboveAndIsBuriedHalfInTheShaft() {
    for (double shaftMm = 6.5; shaftMm <= 110; shaftMm += 0.5) {
      Keyway keyway = Keyway.findForShaft(shaftMm).orElseThrow();
      double clearanceMm = keyway.shaftDepthMm() + keyway.hubDepthMm() - keyway.keyHeightMm();
      assertThat(clearanceMm).as("shaft %s", shaftMm).isBetween(0.19, 0.41);
      assertThat(keyway.shaftDepthMm() / keyway.keyHeightMm())
          .as("shaft %s", shaftMm)
          .isBetween(0.55, 0.65);
    }
    assertThat(Keyway.findForShaft(6)).isEmpty();
    assertThat(Keyway.findForShaft(110.5)).isEmpty();
  }

  @Test
  void aNormalKeySeatsInN9AndJs9() {
    Keyway keyway = Keyway.findForShaft(20).orElseThrow();

    assertThat(keyway.widthTolerance(Place.SHAFT, Seat.NORMAL).text()).isEqualTo("N9");
    assertThat(keyway.widthTolerance(Place.SHAFT, Seat.NORMAL).lowerDeviationMm())
        .isEqualTo(-0.030);
    assertThat(keyway.widthTolerance(Place.HUB, Seat.NORMAL).upperDeviationMm()).isEqualTo(0.015);
    assertThat(keyway.widthTolerance(Place.HUB, Seat.CLOSE).text()).isEqualTo("P9");
    assertThat(keyway.depthTolerance().upperDeviationMm()).isEqualTo(0.1);
  }
}
