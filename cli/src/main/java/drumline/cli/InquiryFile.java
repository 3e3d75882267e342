package drumline.cli;

import drumline.app.ask.OpenInquiry;
import drumline.intake.ReadResult;
import drumline.shop.problem.Problem.Severity;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The inquiry that a command works on, and where its libraries lie. */
final class InquiryFile {
  @Parameters(
      paramLabel = "INQUIRY",
      description = "Inquiry file (YAML): part, material, volumes, today's way.")
  private Path file = Path.of("");

  @Option(
      names = "--library",
      paramLabel = "DIR",
      description =
          "Folder with your own materials.yaml, tools.yaml, machines.yaml; entries of the same"
              + " name take the place of the shipped ones.")
  private @Nullable Path library;

  /** Reads the file; what is wrong with it goes to the screen. */
  ReadResult read(Screen screen) {
    ReadResult result = OpenInquiry.file(file, library);
    screen.problems(result.problems());
    return result;
  }

  /** Whether something in it stops the study. */
  static boolean isWrong(ReadResult result) {
    return result.inquiry().isEmpty()
        || result.problems().stream().anyMatch(p -> p.severity() == Severity.ERROR);
  }
}
