package drumline.cli;

import drumline.app.ask.ImportStep;
import drumline.cli.screen.ExitCodes;
import drumline.cli.screen.Screen;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code drumline from-step}: an inquiry from a solid model. */
@Command(
    name = "from-step",
    description = {
      "Reads a turned piece from a STEP file and writes an inquiry for you to edit.",
      "AP203, AP214 or AP242. Steps, edges, bores, grooves, holes, flats, slots and inside forms are",
      "recognised; what is not understood is said with its place and size. Tolerances, threads,",
      "material and volumes are not in a solid: placeholders are marked REPLACE."
    },
    mixinStandardHelpOptions = true)
final class StepCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", description = "STEP file (ISO 10303-21).")
  private Path file = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Inquiry file to write; a file that is there already is not touched.")
  private @Nullable Path out;

  @Option(names = "--flip", description = "Take the other end as the front.")
  private boolean flip;

  @Option(
      names = "--solid",
      paramLabel = "N",
      defaultValue = "0",
      description = "Which solid, from 1, where the file has several.")
  private int solid;

  @Option(names = "--json", paramLabel = "FILE", description = "Also write the report as JSON.")
  private @Nullable Path json;

  @Override
  public Integer call() throws IOException {
    refuseExisting("--out", out);
    refuseExisting("--json", json);
    Screen screen = Screen.of(spec);
    ImportStep piece = ImportStep.file(file, flip, solid);
    screen.problems(piece.problems());
    if (piece.findText().isEmpty()) {
      return ExitCodes.INPUT_WRONG;
    }
    String text = piece.findText().orElseThrow();
    if (json != null) {
      Files.writeString(json, piece.json(), StandardCharsets.UTF_8);
    }
    if (out == null) {
      screen.line(text.stripTrailing());
    } else {
      Files.writeString(out, text, StandardCharsets.UTF_8);
      report(screen, piece, out);
    }
    screen.problems(piece.checks(out == null ? "inquiry" : String.valueOf(out.getFileName())));
    return ExitCodes.FINE;
  }

  private static void report(Screen screen, ImportStep piece, Path written) {
    List<String> notes = piece.notes();
    screen.line("Written to " + written + "; " + notes.size() + " notes:");
    notes.forEach(note -> screen.line("- " + note));
    screen.line("Replace what is marked REPLACE, then: drumline check " + written);
  }

  private void refuseExisting(String option, @Nullable Path path) {
    if (path != null && Files.exists(path)) {
      throw new ParameterException(
          spec.commandLine(), option + " is " + path + ", allowed: a file that is not there yet");
    }
  }
}
