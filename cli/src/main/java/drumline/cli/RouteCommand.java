package drumline.cli;

import drumline.app.ask.ListInquiry;
import drumline.app.ask.Opened;
import drumline.cli.screen.ExitCodes;
import drumline.cli.screen.Screen;
import drumline.shop.operation.Route;
import drumline.shop.problem.Problem.Severity;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code drumline route}: the operations that a print asks for. */
@Command(
    name = "route",
    description = {
      "Derives the operations that the print asks for: tool, cutting data, time alone at its",
      "fastest, loads, and the reason for every order."
    },
    mixinStandardHelpOptions = true)
final class RouteCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private InquiryFile inquiry = new InquiryFile();

  @Option(names = "--reasons", description = "Show every order with its reason.")
  private boolean reasons;

  @Override
  public Integer call() {
    Screen screen = Screen.of(spec);
    Opened opened = inquiry.open(screen);
    if (opened.isWrong()) {
      return ExitCodes.INPUT_WRONG;
    }
    Route route = ListInquiry.route(opened.inquiry());
    screen.problems(route.problems());
    screen.line(ListInquiry.text(route, reasons));
    boolean wrong = route.problems().stream().anyMatch(p -> p.severity() == Severity.ERROR);
    return wrong ? ExitCodes.INPUT_WRONG : ExitCodes.FINE;
  }
}
