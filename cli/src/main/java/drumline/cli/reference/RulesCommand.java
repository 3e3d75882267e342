package drumline.cli.reference;

import drumline.app.ask.ListRules;
import drumline.app.ask.OpenInquiry;
import drumline.app.ask.Opened;
import drumline.cli.screen.ExitCodes;
import drumline.cli.screen.Screen;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code drumline rules}: what the route goes by. */
@Command(
    name = "rules",
    description = {
      "Lists the rules of the process with their sources, the allowances, and what operations"
          + " reach.",
      "With an inquiry, as its overrides and its shop's practice.yaml have them."
    },
    mixinStandardHelpOptions = true)
public final class RulesCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "0..1",
      paramLabel = "INQUIRY",
      description = "Inquiry file whose overrides count.")
  private @Nullable Path file;

  @Option(
      names = "--library",
      paramLabel = "DIR",
      description = "Folder with your own practice.yaml; only together with an inquiry.")
  private @Nullable Path library;

  @Override
  public Integer call() {
    Screen screen = Screen.of(spec);
    if (library != null && (file == null || !Files.isDirectory(library))) {
      throw new ParameterException(
          spec.commandLine(),
          "--library is " + library + ", allowed: a folder that exists, beside an inquiry");
    }
    if (file == null) {
      screen.line(ListRules.text(Optional.empty()));
      return ExitCodes.FINE;
    }
    Opened opened = OpenInquiry.file(file, library);
    screen.problems(opened.problems());
    if (opened.isWrong()) {
      return ExitCodes.INPUT_WRONG;
    }
    screen.line(ListRules.text(Optional.of(opened)));
    return ExitCodes.FINE;
  }
}
