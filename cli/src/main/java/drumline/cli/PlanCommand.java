package drumline.cli;

import drumline.app.ask.Opened;
import drumline.cli.screen.ExitCodes;
import drumline.cli.screen.Screen;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code drumline plan}: the whole study of an inquiry. */
@Command(
    name = "plan",
    description = {
      "Plans an inquiry: layout, cycle, loads, output, cost.",
      "The layout over positions and slides comes with its cycle and bound, loads against limits,",
      "output, piece cost and payback. Ctrl-C ends the search with the best so far. Several machines",
      "are set side by side."
    },
    mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {
  private static final double LONGEST_S = 3600;

  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private InquiryFile inquiry = new InquiryFile();

  @Option(
      names = "--machine",
      paramLabel = "NAME",
      description =
          "Machine of the library; may be given several times; all for every drum. Else the"
              + " inquiry's own wish, else the best fit.")
  private List<String> machines = List.of();

  @Option(
      names = "--seconds",
      paramLabel = "N",
      defaultValue = "5",
      description = "Effort of the search for each machine (default: ${DEFAULT-VALUE}).")
  private double seconds = 5;

  @Option(
      names = "--advise",
      description = "Say what would shorten the cycle most, each change planned again.")
  private boolean advise;

  @Option(names = "--seed", paramLabel = "N", defaultValue = "1", hidden = true)
  private int seed = 1;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder for study.html, plan.json and the drawings.")
  private @Nullable Path out;

  @Override
  public Integer call() throws IOException {
    if (!(seconds > 0 && seconds <= LONGEST_S)) {
      throw new ParameterException(
          spec.commandLine(),
          "--seconds is " + seconds + ", allowed: above 0, at most " + (int) LONGEST_S);
    }
    if (seed < 0) {
      throw new ParameterException(
          spec.commandLine(), "--seed is " + seed + ", allowed: 0 or more");
    }
    Screen screen = Screen.of(spec);
    Opened opened = inquiry.open(screen);
    if (opened.isWrong()) {
      return ExitCodes.INPUT_WRONG;
    }
    return new Planning(screen, seconds, seed, out).withAdvice(advise).run(opened, machines);
  }
}
