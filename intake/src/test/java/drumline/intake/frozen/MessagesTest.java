package drumline.intake.frozen;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.intake.InquiryReader;
import drumline.intake.ReadResult;
import drumline.intake.library.LibraryPaths;
import drumline.shop.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * What a person reads who writes something wrong: one line of a sound inquiry is changed, and the
 * whole list of messages is compared with the list that was judged good when it was written.
 *
 * <p>Each case of {@code messages.txt} is: the line to change, the line in its place, the messages;
 * cases are parted by a line of dashes.
 */
class MessagesTest {

  private static final Path NO_FOLDER = Path.of("no-such-folder");

  @TestFactory
  List<DynamicTest> saysWhatIsWrong() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    String sound = resource("sound.yaml");
    for (String block : resource("messages.txt").split("(?m)^----\n", -1)) {
      List<String> lines = block.lines().filter(l -> !l.startsWith("#") && !l.isBlank()).toList();
      if (!lines.isEmpty()) {
        tests.add(test(sound, lines));
      }
    }
    return tests;
  }

  private static DynamicTest test(String sound, List<String> lines) {
    String right = lines.get(0).substring(2);
    String wrong = lines.get(1).substring(2).replace("\\n", "\n").replace("\\t", "\t");
    return DynamicTest.dynamicTest(
        right + " becomes " + wrong,
        () -> {
          assertThat(sound).contains(right);
          String text = sound.replace(right, wrong);

          ReadResult result =
              InquiryReader.readText(text, "sound.yaml", NO_FOLDER, LibraryPaths.none());

          assertThat(result.problems())
              .extracting(Problem::toLine)
              .containsExactlyElementsOf(lines.subList(2, lines.size()));
          boolean stops =
              result.problems().stream().anyMatch(p -> p.severity() == Problem.Severity.ERROR);
          assertThat(result.inquiry().isEmpty()).isEqualTo(stops);
        });
  }

  private static String resource(String name) throws IOException {
    try (InputStream stream = MessagesTest.class.getResourceAsStream(name)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
