package drumline.app.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.app.ask.Opened;
import drumline.app.ask.PlanInquiry;
import drumline.app.ask.SearchWatch;
import drumline.app.study.MachineStudy;
import drumline.app.study.PlannedLayout;
import drumline.app.study.SequentialStudy;
import drumline.intake.InquiryReader;
import drumline.intake.library.LibraryPaths;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A piece with every kind of work is compared with machines without a drum, in whatever easily cut
 * material: their slower spindles must not drop out of the study without a word.
 */
class SequentialStudyTest {
  private static final String PIECE = "/drumline/app/practice/dosing-valve-plug.yaml";

  @ParameterizedTest
  @ValueSource(strings = {"CuZn39Pb3", "EN AW-6082"})
  void bothMachinesWithoutADrumAreCompared(String material) throws IOException {
    MachineStudy study = study(material);
    PlannedLayout plan = study.plan().orElseThrow();
    assertThat(plan.audit().isPassed()).isTrue();
    assertThat(plan.proof().holds()).isTrue();

    List<SequentialStudy> others = SequentialStudy.all(study, plan);

    assertThat(others)
        .extracting(other -> other.machine().name())
        .containsExactly("turning-centre-42", "sliding-head-32");
    for (SequentialStudy other : others) {
      double longerS = Math.max(other.cycle().mainS(), other.cycle().secondS());
      assertThat(other.cycleS()).isCloseTo(longerS, within(1e-9));
      assertThat(other.cycle().allInSequenceS()).isGreaterThan(longerS);
      assertThat(plan.timeline().cycleS()).isLessThan(other.cycleS());
    }
  }

  private static MachineStudy study(String material) throws IOException {
    try (InputStream in = SequentialStudyTest.class.getResourceAsStream(PIECE)) {
      assertThat(in).as(PIECE).isNotNull();
      String text =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .replace("material: 11SMn30", "material: " + material);
      Opened opened =
          new Opened(InquiryReader.readText(text, PIECE, Path.of(""), LibraryPaths.none()));
      assertThat(opened.problems()).isEmpty();
      return PlanInquiry.plan(opened, List.of(), 1, 1, SearchWatch.silent()).studies().get(0);
    }
  }
}
