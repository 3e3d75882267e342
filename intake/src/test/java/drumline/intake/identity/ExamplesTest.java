package drumline.intake.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.intake.InquiryReader;
import drumline.intake.ProjectRoot;
import drumline.intake.ReadResult;
import drumline.intake.library.LibraryPaths;
import drumline.shop.problem.Problem;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples that ship are read without any problem. */
class ExamplesTest {

  @ParameterizedTest
  @ValueSource(strings = {"valve-seat-body", "hex-coupling", "sleeve"})
  void isReadWithoutAnyProblem(String name) {
    Path file = ProjectRoot.find().resolve("examples").resolve(name + ".yaml");

    ReadResult result = InquiryReader.read(file, LibraryPaths.none());

    assertThat(result.problems()).extracting(Problem::toLine).isEmpty();
    assertThat(result.inquiry()).isPresent();
    assertThat(result.changes()).isEmpty();
  }
}
