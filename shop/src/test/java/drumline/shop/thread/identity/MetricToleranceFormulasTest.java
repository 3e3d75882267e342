package drumline.shop.thread.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shop.quantity.FigureTable;
import drumline.shop.thread.ThreadCatalogue;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The metric tolerance tables follow from formulas, rounded to the preferred numbers R 40 ([ISO-3],
 * steps of about 6 %); a mistyped cell would stand out. Source of the formulas: [ISO-965-1] 1998,
 * clause 13; from memory.
 */
class MetricToleranceFormulasTest {

  /** One step of R 40 and a little: the tables sometimes take the next number. */
  private static final double ONE_STEP = 0.07;

  private static final double[] EXTERNAL_GRADES = {0.5, 0.63, 0.8, 1, 1.25, 1.6, 2};
  private static final double[] INTERNAL_GRADES = {0.85, 1.06, 1.32, 1.7, 2.12};

  static List<FigureTable.Row> pitches() {
    return FigureTable.read(ThreadCatalogue.class, "metric-pitch-diameters.csv").rows();
  }

  static List<FigureTable.Row> crests() {
    return FigureTable.read(ThreadCatalogue.class, "metric-crests.csv").rows();
  }

  @ParameterizedTest
  @MethodSource("pitches")
  void pitchDiameterTolerancesFollowTheFormula(FigureTable.Row row) {
    double middleMm = Math.sqrt(row.figure("over_mm") * row.figure("up_to_mm"));
    double sixUm = 90 * Math.pow(row.figure("pitch_mm"), 0.4) * Math.pow(middleMm, 0.1);
    for (int grade = 3; grade <= 9; grade++) {
      assertNear(row, "external_" + grade + "_um", EXTERNAL_GRADES[grade - 3] * sixUm, ONE_STEP);
    }
    for (int grade = 4; grade <= 8; grade++) {
      assertNear(row, "internal_" + grade + "_um", INTERNAL_GRADES[grade - 4] * sixUm, ONE_STEP);
    }
  }

  @ParameterizedTest
  @MethodSource("crests")
  void crestTolerancesAndDeviationsFollowTheFormulas(FigureTable.Row row) {
    double pitchMm = row.figure("pitch_mm");
    double sixUm = 180 * Math.cbrt(pitchMm * pitchMm) - 3.15 / Math.sqrt(pitchMm);
    assertNear(row, "external_4_um", 0.63 * sixUm, ONE_STEP);
    assertNear(row, "external_6_um", sixUm, ONE_STEP);
    assertNear(row, "external_8_um", 1.6 * sixUm, ONE_STEP);
    double internalSixUm =
        pitchMm <= 0.8
            ? 433 * pitchMm - 190 * Math.pow(pitchMm, 1.22)
            : 230 * Math.pow(pitchMm, 0.7);
    double[] grades = {0.63, 0.8, 1, 1.25, 1.6};
    for (int grade = 4; grade <= 8; grade++) {
      assertNear(row, "internal_" + grade + "_um", grades[grade - 4] * internalSixUm, ONE_STEP);
    }
    assertNear(row, "g_um", 15 + 11 * pitchMm, ONE_STEP);
    assertNear(row, "f_um", 30 + 11 * pitchMm, ONE_STEP);
    assertNear(row, "e_um", 50 + 11 * pitchMm, 0.11);
  }

  private static void assertNear(
      FigureTable.Row row, String column, double formulaUm, double share) {
    row.findFigure(column)
        .ifPresent(
            um ->
                assertThat(um)
                    .as("%s %s", row.place(), column)
                    .isCloseTo(formulaUm, within(share * formulaUm)));
  }

  @Test
  void theTwoRoundingsOfAGradeGrowWithThePitch() {
    List<FigureTable.Row> rows = crests();
    IntStream.range(1, rows.size())
        .forEach(
            i ->
                assertThat(rows.get(i).figure("internal_6_um"))
                    .as(rows.get(i).place())
                    .isGreaterThanOrEqualTo(rows.get(i - 1).figure("internal_6_um")));
  }
}
