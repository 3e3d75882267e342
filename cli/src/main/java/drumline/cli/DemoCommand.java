package drumline.cli;

import drumline.app.ask.OpenInquiry;
import drumline.app.ask.Opened;
import drumline.cli.screen.Screen;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code drumline demo}: the main job on a shipped example. */
@Command(
    name = "demo",
    description = {
      "Plans the shipped example, a stainless valve seat body on an eight-spindle machine,",
      "shows the study on one screen and writes its files."
    },
    mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {
  private static final String EXAMPLE = "valve-seat-body.yaml";
  private static final double SECONDS = 3;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "drumline-demo",
      description = "Folder for the files (default: ${DEFAULT-VALUE}).")
  private Path out = Path.of("drumline-demo");

  @Override
  public Integer call() throws IOException {
    Screen screen = Screen.of(spec);
    Opened opened = OpenInquiry.example(EXAMPLE);
    screen.problems(opened.problems());
    Files.createDirectories(out);
    Files.writeString(
        out.resolve(EXAMPLE), OpenInquiry.exampleText(EXAMPLE), StandardCharsets.UTF_8);
    return new Planning(screen, SECONDS, 1, out).run(opened, List.of());
  }
}
