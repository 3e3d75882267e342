package drumline.step.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.step.contour.Step;
import drumline.step.inquiry.InquiryText;
import drumline.step.piece.StepImport;
import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Small files written by hand after [ISO-10303-21] and the geometry of ISO 10303-42, one for each
 * schema; their sizes stand in their own comments.
 */
class HandWrittenFilesTest {

  private static StepImport read(String name) throws IOException {
    try (InputStream in = HandWrittenFilesTest.class.getResourceAsStream(name)) {
      assertThat(in).as(name).isNotNull();
      return StepImport.read(name, in.readAllBytes(), false, 0);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "pin-ap203-inch.step, 31.75, 12.7, straight pin, PIN-050, true",
    "bolt-ap242-metre.step, 40, 12, bolzen 12, BOLT-12, false"
  })
  void cylindersHaveTheirSizes(
      String file, double lengthMm, double diameterMm, String name, String number, boolean isInch)
      throws IOException {
    StepImport found = read(file);
    assertThat(found.problems()).isEmpty();
    assertThat(found.name()).isEqualTo(name);
    assertThat(found.number()).isEqualTo(number);
    assertThat(found.isInch()).isEqualTo(isInch);
    assertThat(found.piece().orElseThrow().lengthMm()).isCloseTo(lengthMm, within(1e-9));
    Step step = found.piece().orElseThrow().outside().get(0);
    assertThat(2 * step.r0()).isCloseTo(diameterMm, within(1e-9));
    assertThat(found.piece().orElseThrow().openNotes()).isEmpty();
  }

  @Test
  void aTipWithoutSeamIsATaper() throws IOException {
    StepImport found = read("pin-ap214-mm.step");
    assertThat(found.problems()).isEmpty();
    assertThat(found.name()).isEqualTo("Zapfen Ø6");
    assertThat(found.piece().orElseThrow().lengthMm()).isCloseTo(20, within(1e-9));
    assertThat(found.piece().orElseThrow().openNotes()).isEmpty();
    assertThat(found.piece().orElseThrow().outside()).hasSize(2);
  }

  @Test
  void theInquirySaysInchesAsTheFileDoes() throws IOException {
    String text = InquiryText.of(read("pin-ap203-inch.step"), "pin-ap203-inch.step");
    assertThat(text)
        .contains("units: inch", "length: 1.25 in", "to: 1.25 in, diameter: 0.5 in")
        .contains("size: 0.5625 in", "REPLACE");
  }
}
