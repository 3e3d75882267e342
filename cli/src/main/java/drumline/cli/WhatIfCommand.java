package drumline.cli;

import drumline.app.ask.Opened;
import drumline.app.ask.WhatIf;
import drumline.app.ask.WhatIf.Move;
import drumline.cli.screen.ExitCodes;
import drumline.cli.screen.Interrupt;
import drumline.cli.screen.Screen;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code drumline what-if}: what a move of an operation would cost. */
@Command(
    name = "what-if",
    description = {
      "Says what it would cost to have an operation in another position.",
      "Plans without and with the move and sets both cycles side by side; where no layout is left,",
      "names the rules that stand against it. Operations as drumline route names them."
    },
    mixinStandardHelpOptions = true)
final class WhatIfCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private InquiryFile inquiry = new InquiryFile();

  @Option(
      names = "--move",
      paramLabel = "OP=POSITION",
      required = true,
      description = "Operation and the position it should stand in; may be given several times.")
  private Map<String, Integer> moves = Map.of();

  @Option(
      names = "--machine",
      paramLabel = "NAME",
      description = "Machine of the library. Else the inquiry's own wish, else the best fit.")
  private List<String> machines = List.of();

  @Option(
      names = "--seconds",
      paramLabel = "N",
      defaultValue = "3",
      description = "Effort of each of the two searches (default: ${DEFAULT-VALUE}).")
  private double seconds = 3;

  @Override
  public Integer call() {
    if (!(seconds > 0 && seconds <= 3600)) {
      throw new ParameterException(
          spec.commandLine(), "--seconds is " + seconds + ", allowed: above 0, at most 3600");
    }
    Screen screen = Screen.of(spec);
    Opened opened = inquiry.open(screen);
    if (opened.isWrong()) {
      return ExitCodes.INPUT_WRONG;
    }
    List<Move> asked = new ArrayList<>();
    moves.forEach((operation, position) -> asked.add(new Move(operation, position)));
    try (Interrupt interrupt = Interrupt.listen()) {
      WhatIf answer = WhatIf.ask(opened, machines, asked, seconds, interrupt::isCancelled);
      screen.problems(answer.problems());
      if (!answer.isAsked()) {
        return ExitCodes.INPUT_WRONG;
      }
      screen.line(answer.text());
      return answer.then().isFeasible() ? ExitCodes.FINE : ExitCodes.NO_LAYOUT;
    }
  }
}
