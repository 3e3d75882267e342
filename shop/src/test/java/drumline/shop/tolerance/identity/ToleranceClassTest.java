package drumline.shop.tolerance.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumline.shop.tolerance.StandardTolerance;
import drumline.shop.tolerance.Tolerance;
import drumline.shop.tolerance.ToleranceClass;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What holds for every class at every size, whatever the tables say. */
class ToleranceClassTest {

  private static final List<String> LETTERS =
      List.of(
          "a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h", "j", "js", "k", "m", "n", "p",
          "r", "s", "t", "u", "v", "x", "y", "z", "za", "zb", "zc");
  private static final int DRAWS = 5000;

  @Test
  void theWidthIsTheGradeAndHolesMirrorShafts() {
    long seed = 286;
    SplittableRandom random = new SplittableRandom(seed);
    int defined = 0;
    for (int i = 0; i < DRAWS; i++) {
      double nominalMm = 1.001 + random.nextDouble() * 498.9;
      String letters = LETTERS.get(random.nextInt(LETTERS.size()));
      int grade = random.nextInt(1, 19);
      Optional<Tolerance> shaft = new ToleranceClass(letters, grade).findAt(nominalMm);
      Optional<Tolerance> hole =
          new ToleranceClass(letters.toUpperCase(Locale.ROOT), grade).findAt(nominalMm);
      String what = "seed " + seed + ": " + letters + grade + " at " + nominalMm + " mm";
      for (Tolerance tolerance : List.of(shaft, hole).stream().flatMap(Optional::stream).toList()) {
        defined++;
        assertThat(tolerance.widthMm())
            .as(what)
            .isCloseTo(StandardTolerance.widthMm(grade, nominalMm), within(1.1e-5));
        assertThat(tolerance.nearestItGrade(nominalMm)).as(what).hasValue(grade);
      }
      boolean mirrored = LETTERS.indexOf(letters) <= LETTERS.indexOf("h");
      if (mirrored && shaft.isPresent()) {
        assertThat(hole.orElseThrow().lowerDeviationMm())
            .as(what)
            .isEqualTo(0.0 - shaft.get().upperDeviationMm());
      }
    }
    assertThat(defined).isGreaterThan(DRAWS);
  }

  @Test
  void lettersStandInOrderOfTightness() {
    long seed = 2862;
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < DRAWS / 10; i++) {
      double nominalMm = 1.001 + random.nextDouble() * 498.9;
      double lastMm = Double.NEGATIVE_INFINITY;
      for (String letters : LETTERS) {
        Optional<Tolerance> found = new ToleranceClass(letters, 7).findAt(nominalMm);
        if (found.isPresent() && !letters.startsWith("j")) {
          assertThat(found.get().lowerDeviationMm())
              .as("seed %d: %s7 at %s mm", seed, letters, nominalMm)
              .isGreaterThanOrEqualTo(lastMm);
          lastMm = found.get().lowerDeviationMm();
        }
      }
    }
  }

  @Test
  void aHoleAndAShaftOfTheSameLetterFitAlikeInTheShaftSystemAndTheHoleSystem() {
    // The delta rule exists so that H7/p6 and P7/h6 have the same clearances ([ISO-286-1] 2010,
    // 4.2.3).
    for (String letters : List.of("k", "m", "n", "p", "r", "s", "u")) {
      for (double nominalMm = 3.5; nominalMm < 120; nominalMm += 0.5) {
        Tolerance shaft = new ToleranceClass(letters, 6).findAt(nominalMm).orElseThrow();
        Tolerance hole =
            new ToleranceClass(letters.toUpperCase(Locale.ROOT), 7).findAt(nominalMm).orElseThrow();
        double basicHole = StandardTolerance.widthMm(7, nominalMm);
        double basicShaft = -StandardTolerance.widthMm(6, nominalMm);
        assertThat(hole.upperDeviationMm() - basicShaft)
            .as("%s at %s mm", letters, nominalMm)
            .isCloseTo(basicHole - shaft.lowerDeviationMm(), within(1e-9));
      }
    }
  }

  @Test
  void leavesOutWhatTheStandardLeavesOut() {
    assertThat(new ToleranceClass("K", 9).findAt(20)).isEmpty();
    assertThat(new ToleranceClass("a", 11).findAt(1)).isEmpty();
    assertThat(new ToleranceClass("j", 9).findAt(20)).isEmpty();
    assertThat(new ToleranceClass("J", 5).findAt(20)).isEmpty();
    assertThat(new ToleranceClass("t", 7).findAt(20)).isEmpty();
    assertThat(new ToleranceClass("H", 14).findAt(1)).isEmpty();
    assertThat(new ToleranceClass("P", 2).findAt(20)).isEmpty();
    assertThat(new ToleranceClass("H", 7).findAt(500.1)).isEmpty();
    assertThat(new ToleranceClass("H", 7).findAt(0)).isEmpty();
  }

  @Test
  void theNearestGradeIsTheCoarsestThatFits() {
    Tolerance tolerance = new Tolerance("±0.02", -0.02, 0.02, OptionalInt.empty());

    assertThat(tolerance.nearestItGrade(25)).hasValue(8);
    assertThat(tolerance.nearestItGrade(2)).hasValue(10);
    assertThat(tolerance.middleMm(25)).isEqualTo(25);
    assertThat(new Tolerance("", 0, 0.0001, OptionalInt.empty()).nearestItGrade(25)).isEmpty();
  }

  @Test
  void refusesDeviationsThatAreNoRange() {
    assertThatThrownBy(() -> new Tolerance("", 0.1, 0.1, OptionalInt.empty()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("upperDeviationMm is 0.1; allowed: above 0.1");
    assertThatThrownBy(() -> new Tolerance("", Double.NaN, 0.1, OptionalInt.empty()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("lowerDeviationMm is NaN; allowed: finite numbers");
  }
}
