package drumline.sheets.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumline.sheets.Figures;
import drumline.sheets.content.Cautions;
import drumline.sheets.sample.SampleStudy;
import drumline.sheets.text.StudyText;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FiguresAndScreenTest {

  @ParameterizedTest
  @CsvSource({
    "0, 2, 0.00",
    "-0.001, 2, 0.00",
    "-3.5, 1, −3.5",
    "999.995, 2, 1_000.00",
    "1234567, 0, 1_234_567",
    "12.5, 0, 13",
    "-1234.5, 1, −1_234.5"
  })
  void numbersAreGroupedAndRounded(double value, int decimals, String expected) {
    assertThat(Figures.number(value, decimals)).isEqualTo(expected.replace('_', '\u202f'));
    assertThat(Figures.number(BigDecimal.valueOf(value), decimals))
        .isEqualTo(Figures.number(value, decimals));
  }

  @Test
  void whatIsNotANumberIsADash() {
    assertThat(Figures.number(Double.NaN, 1)).isEqualTo("–");
    assertThat(Figures.number(Double.POSITIVE_INFINITY, 1)).isEqualTo("–");
  }

  @ParameterizedTest
  @ValueSource(ints = {60, 80, 100, 132})
  void staysInsideTheScreen(int width) throws IOException {
    String screen = StudyText.screen(SampleStudy.study(), width);
    Files.writeString(Path.of("target/sample-screen-" + width + ".txt"), screen);
    assertThat(screen.lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(width));
    assertThat(screen.replaceAll("\\s+", " ")).contains(Cautions.GENERAL);
  }

  @Test
  void saysWhatMatters() {
    String screen = StudyText.screen(SampleStudy.study(), 100);
    assertThat(screen.lines().count()).isLessThanOrEqualTo(48);
    assertThat(screen)
        .contains("Valve bushing  N-1704 rev. B", "look closer", "> Position 3", "> Cycle")
        .contains(
            "audit: 6 of 7 checks kept", "> broken: Seats on slide 4-cross, 3 tools, allowed 2")
        .contains("valve-bushing-study.html", "bound 5.58 s");
  }

  @Test
  void refusesAScreenTooNarrow() {
    assertThatThrownBy(() -> StudyText.screen(SampleStudy.study(), 59))
        .hasMessage("widthCount: 59, allowed: at least 60");
  }
}
