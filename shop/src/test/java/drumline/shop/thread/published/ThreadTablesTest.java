package drumline.shop.thread.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shop.quantity.FigureTable;
import drumline.shop.thread.ThreadCatalogue;
import drumline.shop.thread.ThreadSize;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Compares limits with printed tables; each file names its source. */
class ThreadTablesTest {

  private static final double IN_MM = 25.4;

  static List<FigureTable.Row> metric() {
    return FigureTable.read(ThreadTablesTest.class, "metric-6g-6h.csv").rows();
  }

  static List<FigureTable.Row> unified() {
    return FigureTable.read(ThreadTablesTest.class, "unified.csv").rows();
  }

  static List<FigureTable.Row> npt() {
    return FigureTable.read(ThreadTablesTest.class, "npt.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("metric")
  void metricLimitsAreThePrintedOnes(FigureTable.Row row) {
    ThreadSize thread = ThreadCatalogue.find(row.text("name")).orElseThrow();

    assertThat(thread.toleranceClass()).isEqualTo("6g/6H");
    assertLimits(thread, row, 1);
  }

  @ParameterizedTest
  @MethodSource("unified")
  void unifiedLimitsAreThePrintedOnes(FigureTable.Row row) {
    String name = row.text("name") + "-" + row.text("class") + "A";
    ThreadSize thread = ThreadCatalogue.find(name).orElseThrow();

    assertLimits(thread, row, IN_MM);
  }

  private static void assertLimits(ThreadSize thread, FigureTable.Row row, double unitMm) {
    var external = thread.external().orElseThrow();
    var internal = thread.internal().orElseThrow();
    assertFigure(row, "d_max", external.majorMaxMm() / unitMm);
    assertFigure(row, "d_min", external.majorMinMm() / unitMm);
    assertFigure(row, "d2_max", external.pitchMaxMm() / unitMm);
    assertFigure(row, "d2_min", external.pitchMinMm() / unitMm);
    assertFigure(row, "d1_min", internal.minorMinMm() / unitMm);
    assertFigure(row, "d1_max", internal.minorMaxMm() / unitMm);
    assertFigure(row, "D2_min", internal.pitchMinMm() / unitMm);
    assertFigure(row, "D2_max", internal.pitchMaxMm() / unitMm);
  }

  private static void assertFigure(FigureTable.Row row, String column, double ours) {
    String printed = row.text(column);
    if (printed.isEmpty()) {
      return;
    }
    int decimals = printed.length() - printed.indexOf('.') - 1;
    double halfDigit = 0.5 * Math.pow(10, -decimals) + 1e-9;
    assertThat(ours)
        .as("%s %s of %s", row.place(), column, row.text("name"))
        .isCloseTo(row.figure(column), within(halfDigit));
  }

  static List<FigureTable.Row> pipe() {
    return FigureTable.read(ThreadTablesTest.class, "pipe-g.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("pipe")
  void pipeThreadsAreThePrintedOnes(FigureTable.Row row) {
    ThreadSize thread = ThreadCatalogue.find(row.text("name")).orElseThrow();
    var external = thread.external().orElseThrow();
    var internal = thread.internal().orElseThrow();

    assertExact(row, "pitch_mm", thread.pitchMm());
    assertExact(row, "major_mm", external.majorMaxMm());
    assertExact(row, "pitch_diameter_mm", thread.pitchDiameterMm());
    assertExact(row, "minor_mm", internal.minorMinMm());
    assertExact(row, "pitch_tolerance_mm", internal.pitchMaxMm() - internal.pitchMinMm());
    assertExact(row, "pitch_tolerance_mm", external.pitchMaxMm() - external.pitchMinMm());
    assertExact(row, "minor_tolerance_mm", internal.minorMaxMm() - internal.minorMinMm());
    assertExact(row, "major_tolerance_mm", external.majorMaxMm() - external.majorMinMm());
  }

  private static void assertExact(FigureTable.Row row, String column, double ours) {
    assertThat(ours)
        .as("%s of %s", column, row.text("name"))
        .isCloseTo(row.figure(column), within(1e-9));
  }

  @ParameterizedTest
  @MethodSource("npt")
  void nptPitchDiametersAndLengthsAreThePrintedOnes(FigureTable.Row row) {
    ThreadSize thread = ThreadCatalogue.find(row.text("name")).orElseThrow();

    assertThat(thread.pitchDiameterMm() / IN_MM)
        .as(row.text("name"))
        .isCloseTo(row.figure("e1_in"), within(0.000015));
    assertFigure(row, "l2_in", thread.taper().orElseThrow().usefulMm() / IN_MM);
  }
}
