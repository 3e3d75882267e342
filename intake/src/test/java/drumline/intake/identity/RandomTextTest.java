package drumline.intake.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.intake.InquiryReader;
import drumline.intake.ProjectRoot;
import drumline.intake.ReadResult;
import drumline.intake.library.LibraryPaths;
import drumline.shop.problem.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever stands in a file: reading it ends with an inquiry or with errors, and never throws. */
class RandomTextTest {

  private static final String PIECES =
      "abcxyz0123456789 \n\n  :-[]{}&*!|>'\"%@`#,?°±øµ\t.\u0000\uFFFE";

  @TempDir private Path folder;

  static LongStream seeds() {
    return LongStream.range(0, 25);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void bytes(long seed) throws IOException {
    Random random = new Random(seed);
    byte[] bytes = new byte[random.nextInt(400)];
    random.nextBytes(bytes);

    endsWell(bytes);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void signs(long seed) throws IOException {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(200); i >= 0; i--) {
      text.append(PIECES.charAt(random.nextInt(PIECES.length())));
    }

    endsWell(text.toString().getBytes(StandardCharsets.UTF_8));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void truncatedExample(long seed) throws IOException {
    byte[] whole = example(seed).getBytes(StandardCharsets.UTF_8);
    int length = new Random(seed).nextInt(whole.length);

    endsWell(Arrays.copyOf(whole, length));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void exampleWithSomethingElseInIt(long seed) throws IOException {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder(example(seed));
    for (int i = 0; i < 3; i++) {
      int at = random.nextInt(text.length());
      char other = PIECES.charAt(random.nextInt(PIECES.length()));
      text.replace(at, Math.min(text.length(), at + random.nextInt(3)), String.valueOf(other));
    }

    endsWell(text.toString().getBytes(StandardCharsets.UTF_8));
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void exampleWithValuesSwapped(long seed) throws IOException {
    Random random = new Random(seed);
    List<String> words = List.of(example(seed).split("(?<=[:, ])", -1));
    StringBuilder text = new StringBuilder();
    for (String word : words) {
      text.append(random.nextInt(60) == 0 ? words.get(random.nextInt(words.size())) : word);
    }

    endsWell(text.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static String example(long seed) throws IOException {
    List<String> names = List.of("valve-seat-body", "hex-coupling", "sleeve");
    String name = names.get((int) (seed % names.size())) + ".yaml";
    return Files.readString(ProjectRoot.find().resolve("examples").resolve(name));
  }

  private void endsWell(byte[] bytes) throws IOException {
    Path file = Files.write(folder.resolve("a.yaml"), bytes);

    ReadResult result = InquiryReader.read(file, LibraryPaths.none());

    boolean stops =
        result.problems().stream().anyMatch(p -> p.severity() == Problem.Severity.ERROR);
    assertThat(result.inquiry().isEmpty()).isEqualTo(stops);
    assertThat(result.problems()).allSatisfy(RandomTextTest::isComplete);
  }

  private static void isComplete(Problem problem) {
    assertThat(problem.code()).matches("[a-z0-9]+(-[a-z0-9]+)*");
    assertThat(problem.where()).isNotBlank();
    assertThat(problem.found()).isNotBlank();
    assertThat(problem.allowed()).isNotBlank();
    assertThat(problem.hint()).matches("|Maybe [\\s\\S]+\\.");
  }
}
