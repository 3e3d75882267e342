package drumline.cli;

import drumline.app.ask.OpenInquiry;
import drumline.app.ask.Opened;
import drumline.cli.screen.Screen;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

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
          "Folder with your own materials.yaml, tools.yaml, machines.yaml, practice.yaml; entries"
              + " of the same name take the place of the shipped ones.")
  private @Nullable Path library;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  /**
   * Reads the file; what is wrong with it goes to the screen.
   *
   * @throws ParameterException if the library is no folder, since its figures would be missed
   */
  Opened open(Screen screen) {
    if (library != null && !Files.isDirectory(library)) {
      throw new ParameterException(
          spec.commandLine(), "--library is " + library + ", allowed: a folder that exists");
    }
    Opened opened = OpenInquiry.file(file, library);
    screen.problems(opened.problems());
    return opened;
  }
}
