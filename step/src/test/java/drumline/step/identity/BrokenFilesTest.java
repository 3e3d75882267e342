package drumline.step.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.shop.problem.Problem;
import drumline.step.brep.MilledPieces;
import drumline.step.brep.StepText;
import drumline.step.piece.StepImport;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Broken files are told of, with their line, and never end in a fault of the program. */
class BrokenFilesTest {
  private static final String HEAD =
      "ISO-10303-21;\nHEADER;\nFILE_SCHEMA(('AUTOMOTIVE_DESIGN'));\nENDSEC;\nDATA;\n";
  private static final String TAIL = "ENDSEC;\nEND-ISO-10303-21;\n";

  private static Problem only(String text) {
    List<Problem> problems =
        StepImport.read("a.step", text.getBytes(StandardCharsets.UTF_8), false, 0).problems();
    assertThat(problems).hasSize(1);
    return problems.get(0);
  }

  @Test
  void messagesSayLineAndWhatIsAllowed() {
    assertThat(only("solid x").toLine()).contains("a.step, line 1").contains("ISO-10303-21");
    assertThat(only(HEAD + "#1=POINT('',(1.,2.,3.));\n#2=X(1.\n").toLine())
        .contains("line 8")
        .contains("the end of the file");
    assertThat(only(HEAD + "#1=X('open);\n" + TAIL).toLine()).contains("line 6", "without end");
    assertThat(only(HEAD + "#1=X();\n#1=Y();\n" + TAIL).toLine()).contains("line 7", "second time");
    assertThat(only(HEAD + "#1=X(1..2);\n" + TAIL).toLine()).contains("line 6", "a number");
    assertThat(only(HEAD + "/* no end\n#1=X();\n" + TAIL).toLine()).contains("line 6", "comment");
    assertThat(only(HEAD + "#1=X();\n").hint()).contains("cut short");
  }

  @Test
  void whatIsNoSolidOfOnePieceIsTold() {
    assertThat(only(HEAD + "#1=CARTESIAN_POINT('',(0.,0.,0.));\n" + TAIL).code())
        .isEqualTo("no-solid");
    assertThat(only(HEAD + "#1=MANIFOLD_SOLID_BREP('',#7);\n" + TAIL).code())
        .isEqualTo("step-unit");
    String units =
        """
        #2=(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.));
        #3=(GLOBAL_UNIT_ASSIGNED_CONTEXT((#2))REPRESENTATION_CONTEXT('',''));
        """;
    Problem dangling = only(HEAD + units + "#1=MANIFOLD_SOLID_BREP('',#7);\n" + TAIL);
    assertThat(dangling.toLine()).contains("#7").contains("not in the file");
  }

  static IntStream seeds() {
    return IntStream.rangeClosed(1, 150);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noContentMakesTheProgramFail(int seed) {
    Random random = new Random(seed);
    byte[] file = new MilledPieces(StepText.Style.plain()).milled();
    for (int i = 0; i < 1 + random.nextInt(4); i++) {
      int at = random.nextInt(file.length);
      switch (random.nextInt(4)) {
        case 0 -> file[at] = (byte) random.nextInt(256);
        case 1 -> file = Arrays.copyOf(file, at);
        case 2 -> file[at] = (byte) "'(),;#$*./0123456789".charAt(random.nextInt(20));
        default -> {
          int to = Math.min(file.length, at + random.nextInt(40));
          byte[] shorter = Arrays.copyOf(file, file.length - (to - at));
          System.arraycopy(file, to, shorter, at, file.length - to);
          file = shorter;
        }
      }
      if (file.length == 0) {
        break;
      }
    }
    StepImport found = StepImport.read("seed" + seed, file, false, 0);
    assertThat(found.piece().isPresent()).isEqualTo(found.problems().isEmpty());
  }
}
