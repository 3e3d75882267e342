package drumline.shop.thread.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shop.quantity.FigureTable;
import drumline.shop.thread.ThreadCatalogue;
import drumline.shop.thread.ThreadSize;
import drumline.shop.thread.ThreadSize.ExternalLimits;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Thread classes beside 6g and 6H, and pipe threads R, against open pages; the files name them. */
class OtherThreadClassesTest {

  static List<FigureTable.Row> external() {
    return rows("metric-other-classes.csv");
  }

  static List<FigureTable.Row> internal() {
    return rows("metric-internal-um.csv");
  }

  static List<FigureTable.Row> pipe() {
    return rows("pipe-r.csv");
  }

  private static List<FigureTable.Row> rows(String name) {
    return FigureTable.read(OtherThreadClassesTest.class, name).rows();
  }

  private static ThreadSize thread(String name) {
    return ThreadCatalogue.find(name).orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("external")
  void externalLimitsAreThePrintedOnes(FigureTable.Row row) {
    ExternalLimits limits = thread(row.text("name")).external().orElseThrow();
    assertMm(row, "d_max", limits.majorMaxMm());
    assertMm(row, "d_min", limits.majorMinMm());
    assertMm(row, "d2_max", limits.pitchMaxMm());
    assertMm(row, "d2_min", limits.pitchMinMm());
  }

  private static void assertMm(FigureTable.Row row, String column, double ours) {
    assertThat(ours)
        .as("%s %s of %s", row.place(), column, row.text("name"))
        .isCloseTo(row.figure(column), within(0.0005 + 1e-9));
  }

  @ParameterizedTest
  @MethodSource("internal")
  void internalPitchDiametersAreThePrintedOnes(FigureTable.Row row) {
    for (String grade : new String[] {"4", "5", "6"}) {
      ThreadSize thread = thread(row.text("name") + "-" + grade + "H");
      var limits = thread.internal().orElseThrow();
      assertUm(row, "h" + grade + "_um", limits.pitchMaxMm() - limits.pitchMinMm());
      assertThat(limits.pitchMinMm()).isCloseTo(thread.pitchDiameterMm(), within(1e-9));
    }
    if (row.findFigure("g6_min_um").isPresent()) {
      ThreadSize thread = thread(row.text("name") + "-6G");
      var limits = thread.internal().orElseThrow();
      assertUm(row, "g6_min_um", limits.pitchMinMm() - thread.pitchDiameterMm());
      assertUm(row, "g6_max_um", limits.pitchMaxMm() - thread.pitchDiameterMm());
    }
  }

  /** The standard rounds the basic diameter to a micrometre, so differences are whole ones. */
  private static void assertUm(FigureTable.Row row, String column, double oursMm) {
    assertThat(1000 * oursMm)
        .as("%s %s of %s", row.place(), column, row.text("name"))
        .isCloseTo(row.figure(column), within(1e-6));
  }

  @ParameterizedTest
  @MethodSource("pipe")
  void taperPipeThreadsAreThePrintedOnes(FigureTable.Row row) {
    ThreadSize thread = thread(row.text("name"));
    String what = row.place() + " " + row.text("name");
    assertThat(thread.pitchMm()).as(what).isCloseTo(row.figure("pitch_mm"), within(1e-9));
    assertThat(thread.majorMm()).as(what).isCloseTo(row.figure("major_mm"), within(1e-9));
    assertThat(thread.minorMm()).as(what).isCloseTo(row.figure("minor_mm"), within(1e-9));
    assertThat(thread.taper().orElseThrow().gaugeMm())
        .as(what)
        .isCloseTo(row.figure("gauge_mm"), within(1e-9));
    assertThat(thread.taperRatio()).isEqualTo(1.0 / 16);
  }

  /**
   * Class 6e of common sizes: es by the formula of [ISO-965-1], 50 + 11·P µm rounded to preferred
   * figures, and the tolerances of 6g; limits from memory of the standard's tables.
   */
  @ParameterizedTest
  @CsvSource({"M6, 60, 1", "M8, 63, 1.25", "M10, 67, 1.5", "M12, 71, 1.75", "M16, 71, 2"})
  void class6eLiesDeeperThan6gByItsDeviation(String name, double eUm, double pitchMm) {
    ExternalLimits e = thread(name + "-6e").external().orElseThrow();
    ExternalLimits h = thread(name + "-6h").external().orElseThrow();
    assertThat(1000 * (h.majorMaxMm() - e.majorMaxMm())).as(name).isCloseTo(eUm, within(1e-6));
    assertThat(1000 * (h.pitchMinMm() - e.pitchMinMm())).as(name).isCloseTo(eUm, within(1e-6));
    assertThat(eUm).isCloseTo(50 + 11 * pitchMm, within(3.0));
  }
}
