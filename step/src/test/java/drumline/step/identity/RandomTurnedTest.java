package drumline.step.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.step.brep.RandomTurned;
import drumline.step.brep.StepText;
import drumline.step.brep.TurnedBrep;
import drumline.step.contour.Bore;
import drumline.step.contour.Rim;
import drumline.step.contour.Step;
import drumline.step.piece.StepImport;
import drumline.step.piece.TurnedPiece;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A stepped piece written by chance in any place, form and unit comes back as it was. */
class RandomTurnedTest {
  private static final double NEAR = 0.01;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 80);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void comesBack(long seed) {
    RandomTurned given = new RandomTurned(seed);
    Random random = new Random(seed);
    StepText text = new StepText(StepText.Style.random(random));
    int split = new int[] {1, 2, 4}[random.nextInt(3)];
    TurnedBrep.Surfaces form =
        java.util.List.of(TurnedBrep.Surfaces.values()).get(random.nextInt(4));
    byte[] file = text.file(new TurnedBrep(text, split, form, random).faces(given.section()));
    StepImport one = StepImport.read("seed" + seed, file, false, 0);
    assertThat(one.problems()).isEmpty();
    StepImport other = StepImport.read("seed" + seed, file, true, 0);
    boolean isSame = frontIs(one.piece().orElseThrow(), given);
    TurnedPiece found = (isSame ? one : other).piece().orElseThrow();
    check(found, given);
    assertThat(found.openNotes()).isEmpty();
    assertThat(one.name()).isEqualTo("Büchse 'A'");
  }

  private static boolean frontIs(TurnedPiece found, RandomTurned given) {
    try {
      check(found, given);
      return true;
    } catch (AssertionError e) {
      return false;
    }
  }

  private static void check(TurnedPiece found, RandomTurned given) {
    assertThat(found.lengthMm()).isCloseTo(given.length(), within(NEAR));
    assertThat(found.outside()).hasSameSizeAs(given.outsideSteps());
    for (int i = 0; i < found.outside().size(); i++) {
      Step step = found.outside().get(i);
      double[] s = given.outsideSteps().get(i);
      assertThat(new double[] {step.z0(), step.r0(), step.z1(), step.r1()})
          .containsExactly(s, within(NEAR));
      rim(step.front(), given.rimsOutside().get(i)[0]);
      rim(step.back(), given.rimsOutside().get(i)[1]);
    }
    assertThat(found.grooves()).hasSameSizeAs(given.groovesOutside());
    for (int i = 0; i < found.grooves().size(); i++) {
      var groove = found.grooves().get(i);
      assertThat(new double[] {groove.z0(), groove.z1(), groove.r()})
          .containsExactly(given.groovesOutside().get(i), within(NEAR));
    }
    bores(found.bores().front(), given.frontBore(), given.isThrough());
    bores(found.bores().back(), given.backBore(), given.isThrough());
  }

  private static void rim(Rim rim, String wanted) {
    String[] words = wanted.split(" ", -1);
    switch (words[0]) {
      case "none" -> assertThat(rim.kind()).isEqualTo(Rim.Kind.NONE);
      case "R" -> {
        assertThat(rim.kind()).isEqualTo(Rim.Kind.RADIUS);
        assertThat(rim.sizeMm()).isCloseTo(Double.parseDouble(words[1]), within(NEAR));
      }
      default -> {
        assertThat(rim.kind()).isEqualTo(Rim.Kind.CHAMFER);
        assertThat(rim.sizeMm()).isCloseTo(Double.parseDouble(words[1]), within(NEAR));
        assertThat(rim.angleDeg()).isCloseTo(Double.parseDouble(words[2]), within(0.1));
      }
    }
  }

  private static void bores(
      java.util.List<Bore> found, java.util.List<double[]> given, boolean isThrough) {
    assertThat(found).hasSameSizeAs(given);
    for (int i = 0; i < found.size(); i++) {
      Bore bore = found.get(i);
      double[] s = given.get(i);
      assertThat(new double[] {bore.from(), bore.to(), bore.startR(), bore.endR()})
          .containsExactly(new double[] {s[0], s[1], s[2], s[2]}, within(NEAR));
      if (i + 1 == given.size() && !isThrough) {
        assertThat(bore.bottom()).isEqualTo(s[3] == 1 ? Bore.Bottom.DRILL_POINT : Bore.Bottom.FLAT);
      }
    }
  }
}
