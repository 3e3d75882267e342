package drumline.shop.tolerance.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumline.shop.tolerance.StandardTolerance;
import drumline.shop.tolerance.Tolerance;
import drumline.shop.tolerance.ToleranceClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The tables follow from formulas that the standard gives for them and then rounds, freely so at
 * small sizes, which are left out here; a mistyped cell would stand out. Source of the formulas:
 * [ISO-286-1] 2010, annex A, and the older [ISO-286-1] 1988, annex A, for the deviations; from
 * memory.
 */
class StandardFormulasTest {

  private static final double[] BOUNDS_MM = {
    0, 3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500
  };
  private static final double[] SUB_BOUNDS_MM = {
    0, 3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315,
    355, 400, 450, 500
  };
  private static final double[] STEPS = {
    7, 10, 16, 25, 40, 64, 100, 160, 250, 400, 640, 1000, 1600, 2500
  };

  private static final int FROM_14_MM = 4;
  private static final int FROM_40_MM = 8;

  private static double middleMm(double[] bounds, int i) {
    return Math.sqrt((bounds[i] == 0 ? 1 : bounds[i]) * bounds[i + 1]);
  }

  @Test
  void gradesFromFiveOnAreMultiplesOfTheToleranceUnit() {
    for (int i = 1; i + 1 < BOUNDS_MM.length; i++) {
      double d = middleMm(BOUNDS_MM, i);
      double unitUm = 0.45 * Math.cbrt(d) + 0.001 * d;
      for (int k = 0; k < STEPS.length; k++) {
        double tableUm = StandardTolerance.widthMm(5 + k, BOUNDS_MM[i + 1]) * 1000;
        double formulaUm = STEPS[k] * unitUm;
        assertThat(tableUm)
            .as("IT%d to %s mm", 5 + k, BOUNDS_MM[i + 1])
            .isCloseTo(formulaUm, within(0.6 + 0.045 * formulaUm));
      }
    }
  }

  @Test
  void everyGradeIsWiderThanTheOneBeforeAndGrowsWithTheSize() {
    for (int i = 0; i + 1 < BOUNDS_MM.length; i++) {
      double nominalMm = BOUNDS_MM[i + 1];
      for (int grade = 2; grade <= 18; grade++) {
        double width = StandardTolerance.widthMm(grade, nominalMm);
        double finer = StandardTolerance.widthMm(grade - 1, nominalMm);
        assertThat(width / finer).as("IT%d at %s mm", grade, nominalMm).isBetween(1.2, 1.85);
        if (i > 0) {
          assertThat(width)
              .as("IT%d at %s mm", grade, nominalMm)
              .isGreaterThanOrEqualTo(StandardTolerance.widthMm(grade, BOUNDS_MM[i]));
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "d, 16, 0.44",
    "e, 11, 0.41",
    "f, 5.5, 0.41",
    "g, 2.5, 0.34",
    "n, 5, 0.34",
  })
  void powersOfTheSizeGiveTheDeviation(String letter, double factor, double exponent) {
    for (int i = 1; i + 1 < BOUNDS_MM.length; i++) {
      double formulaUm = factor * Math.pow(middleMm(BOUNDS_MM, i), exponent);
      assertThat(nearLimitUm(letter, BOUNDS_MM[i + 1]))
          .as("%s to %s mm", letter, BOUNDS_MM[i + 1])
          .isCloseTo(formulaUm, within(1 + 0.03 * formulaUm));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "t, 7, 0.63",
    "u, 7, 1",
    "v, 7, 1.25",
    "x, 7, 1.6",
    "y, 7, 2",
    "z, 7, 2.5",
    "za, 8, 3.15",
    "zb, 9, 4",
    "zc, 10, 5",
  })
  void pressFitsAreAGradePlusAShareOfTheSize(String letter, int grade, double share) {
    for (int i = FROM_14_MM; i + 1 < SUB_BOUNDS_MM.length; i++) {
      double nominalMm = SUB_BOUNDS_MM[i + 1];
      var found = new ToleranceClass(letter, 7).findAt(nominalMm);
      if (found.isPresent()) {
        double gradeUm = StandardTolerance.widthMm(grade, nominalMm) * 1000;
        double formulaUm = gradeUm + share * middleMm(SUB_BOUNDS_MM, i);
        assertThat(found.get().lowerDeviationMm() * 1000)
            .as("%s to %s mm", letter, nominalMm)
            .isCloseTo(formulaUm, within(Math.max(3.2, 0.04 * formulaUm)));
      }
    }
  }

  @Test
  void looseFitsFollowTheirLines() {
    for (int i = FROM_40_MM; i + 1 < SUB_BOUNDS_MM.length; i++) {
      double nominalMm = SUB_BOUNDS_MM[i + 1];
      double d = middleMm(SUB_BOUNDS_MM, i);
      double a = d <= 120 ? 265 + 1.3 * d : 3.5 * d;
      double b = d <= 160 ? 140 + 0.85 * d : 1.8 * d;
      double c = 95 + 0.8 * d;
      assertThat(nearLimitUm("a", nominalMm)).as("a %s", nominalMm).isCloseTo(a, within(0.03 * a));
      assertThat(nearLimitUm("b", nominalMm)).as("b %s", nominalMm).isCloseTo(b, within(0.05 * b));
      assertThat(nearLimitUm("c", nominalMm)).as("c %s", nominalMm).isCloseTo(c, within(0.03 * c));
    }
  }

  @Test
  void eachLetterBetweenTwoOthersIsTheirGeometricMean() {
    for (double nominalMm : new double[] {3, 6, 10}) {
      assertMean("c", "cd", "d", nominalMm);
      assertMean("e", "ef", "f", nominalMm);
      assertMean("f", "fg", "g", nominalMm);
    }
    for (double nominalMm : SUB_BOUNDS_MM) {
      if (nominalMm > 0) {
        assertMean("p", "r", "s", nominalMm);
      }
    }
  }

  private static void assertMean(String first, String middle, String last, double nominalMm) {
    double mean = Math.sqrt(nearLimitUm(first, nominalMm) * nearLimitUm(last, nominalMm));
    assertThat(nearLimitUm(middle, nominalMm))
        .as("%s at %s mm", middle, nominalMm)
        .isCloseTo(mean, within(1.2 + 0.02 * mean));
  }

  /** Distance of the limit nearest to the nominal size. */
  private static double nearLimitUm(String letters, double nominalMm) {
    Tolerance tolerance = new ToleranceClass(letters, 7).findAt(nominalMm).orElseThrow();
    return 1000
        * Math.min(Math.abs(tolerance.lowerDeviationMm()), Math.abs(tolerance.upperDeviationMm()));
  }

  @Test
  void refusesGradesAndSizesOutsideTheTable() {
    assertThatThrownBy(() -> StandardTolerance.widthMm(19, 10))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("grade is 19, nominalMm is 10.0; allowed: grade 1 to 18");
    assertThatThrownBy(() -> StandardTolerance.widthMm(7, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("nominalMm is NaN");
  }
}
