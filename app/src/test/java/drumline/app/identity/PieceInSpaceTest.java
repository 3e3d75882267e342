package drumline.app.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.app.ask.OpenInquiry;
import drumline.app.ask.PieceInSpace;
import drumline.shop.inquiry.Inquiry;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PieceInSpaceTest {

  @ParameterizedTest
  @ValueSource(strings = {"valve-seat-body.yaml", "hex-coupling.yaml", "sleeve.yaml"})
  void eachExampleHasAClosedPieceInSpace(String name) {
    Inquiry inquiry = OpenInquiry.example(name).inquiry();
    PieceInSpace piece = PieceInSpace.of(inquiry.part(), inquiry.bar());
    assertThat(piece.problems()).isEmpty();
    byte[] file = piece.glb().orElseThrow();
    assertThat(new String(Arrays.copyOf(file, 4), StandardCharsets.US_ASCII)).isEqualTo("glTF");
    assertThat(file.length).isBetween(20_000, 2_000_000);
  }
}
