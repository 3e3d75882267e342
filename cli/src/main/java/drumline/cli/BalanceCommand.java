package drumline.cli;

import drumline.app.balance.BalanceFile;
import drumline.cli.screen.ExitCodes;
import drumline.cli.screen.Interrupt;
import drumline.cli.screen.Screen;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code drumline balance}: known times shared among positions. */
@Command(
    name = "balance",
    description = {
      "Shares operations with known times among positions.",
      "The fullest position becomes as short as can be. FILE is a table (CSV: id, time,",
      "predecessors) or a precedence graph in .IN2 form (count, times, pairs, -1,-1).",
      "Times are whole numbers in one unit of your own; the cycle comes out in the same."
    },
    mixinStandardHelpOptions = true)
final class BalanceCommand implements Callable<Integer> {
  private static final int MOST_POSITIONS = 1000;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE", description = "Table or precedence graph.")
  private Path file = Path.of("");

  @Option(
      names = "--positions",
      paramLabel = "M",
      required = true,
      description = "Number of positions.")
  private int positions;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      defaultValue = "10",
      description = "Effort of the search (default: ${DEFAULT-VALUE}).")
  private double seconds = 10;

  @Option(names = "--json", description = "Write the result as JSON.")
  private boolean json;

  @Override
  public Integer call() {
    if (positions < 1 || positions > MOST_POSITIONS) {
      throw new ParameterException(
          spec.commandLine(), "--positions is " + positions + ", allowed: 1 to " + MOST_POSITIONS);
    }
    if (!(seconds > 0)) {
      throw new ParameterException(
          spec.commandLine(), "--seconds is " + seconds + ", allowed: above 0");
    }
    Screen screen = Screen.of(spec);
    try (Interrupt interrupt = Interrupt.listen()) {
      BalanceFile balance = BalanceFile.balance(file, positions, seconds, interrupt::isCancelled);
      screen.problems(balance.problems());
      if (!balance.isShared()) {
        return ExitCodes.INPUT_WRONG;
      }
      screen.line(json ? balance.json(positions) : balance.text(positions));
      return ExitCodes.FINE;
    }
  }
}
