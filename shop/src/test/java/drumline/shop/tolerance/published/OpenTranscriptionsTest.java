package drumline.shop.tolerance.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shop.tolerance.StandardTolerance;
import drumline.shop.tolerance.Tolerance;
import drumline.shop.tolerance.ToleranceClass;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * Compares every class at every size with the majority of four independent public transcriptions of
 * [ISO-286-1] and [ISO-286-2] ({@code shared/data/tolerances}); exact, since both are whole or half
 * micrometres.
 */
class OpenTranscriptionsTest {

  private static final Pattern LIMIT_ROW =
      Pattern.compile(
          "\"class\":\"([A-Za-z]+)(\\d+)\",\"over\":(\\d+),\"upTo\":(\\d+),"
              + "\"lower_um\":(-?[\\d.]+),\"upper_um\":(-?[\\d.]+)");
  private static final Pattern SIZE = Pattern.compile("\"(\\d+)\": \\{([^}]*)}");
  private static final Pattern GRADE = Pattern.compile("\"(\\d+)\": ([\\d.]+)");

  @Test
  void everyClassAtEverySizeHasThePublishedLimits(TestReporter reporter) {
    Matcher row = LIMIT_ROW.matcher(OpenTranscriptions.text("iso286.json"));
    int compared = 0;
    int notCovered = 0;
    while (row.find()) {
      ToleranceClass code = new ToleranceClass(row.group(1), Integer.parseInt(row.group(2)));
      double overMm = Double.parseDouble(row.group(3));
      double upToMm = Double.parseDouble(row.group(4));
      for (double nominalMm : new double[] {Math.nextUp(overMm), (overMm + upToMm) / 2, upToMm}) {
        if (isTooSmall(nominalMm)) {
          continue;
        }
        Optional<Tolerance> ours = code.findAt(nominalMm);
        if (ours.isEmpty()) {
          notCovered++;
          continue;
        }
        compared++;
        String what = row.group() + " at " + nominalMm + " mm";
        assertThat(ours.get().lowerDeviationMm() * 1000)
            .as(what)
            .isCloseTo(Double.parseDouble(row.group(5)), within(1e-6));
        assertThat(ours.get().upperDeviationMm() * 1000)
            .as(what)
            .isCloseTo(Double.parseDouble(row.group(6)), within(1e-6));
      }
    }
    reporter.publishEntry("limits compared", Integer.toString(compared));
    reporter.publishEntry("limits not covered", Integer.toString(notCovered));
    assertThat(compared).isGreaterThan(4000);
    assertThat(notCovered).isZero();
  }

  /** Just above zero the standard excludes some classes that the transcriptions give for 0 to 3. */
  private static boolean isTooSmall(double nominalMm) {
    return nominalMm <= 1;
  }

  @Test
  void everyGradeHasThePublishedWidth(TestReporter reporter) {
    Matcher size = SIZE.matcher(OpenTranscriptions.text("iso286_it.json"));
    int compared = 0;
    while (size.find()) {
      double nominalMm = Double.parseDouble(size.group(1));
      Matcher grade = GRADE.matcher(size.group(2));
      while (grade.find()) {
        double ourUm =
            StandardTolerance.widthMm(Integer.parseInt(grade.group(1)), nominalMm) * 1000;
        assertThat(ourUm)
            .as("IT%s at %s mm", grade.group(1), nominalMm)
            .isCloseTo(Double.parseDouble(grade.group(2)), within(1e-9));
        compared++;
      }
    }
    reporter.publishEntry("widths compared", Integer.toString(compared));
    assertThat(compared).isEqualTo(72);
  }
}
