package drumline.cli;

import drumline.app.ask.ListInquiry;
import drumline.app.ask.Opened;
import drumline.cli.screen.ExitCodes;
import drumline.cli.screen.Screen;
import drumline.shop.problem.Problem;
import drumline.shop.problem.Problem.Severity;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code drumline check}: everything that is wrong with an inquiry, at once. */
@Command(
    name = "check",
    description = "Lists everything that is wrong with an inquiry, with file and line.",
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private InquiryFile inquiry = new InquiryFile();

  @Override
  public Integer call() {
    Screen screen = Screen.of(spec);
    Opened opened = inquiry.open(screen);
    if (opened.isWrong()) {
      return ExitCodes.INPUT_WRONG;
    }
    List<Problem> ofRoute = ListInquiry.route(opened.inquiry()).problems();
    screen.problems(ofRoute);
    if (ofRoute.stream().anyMatch(problem -> problem.severity() == Severity.ERROR)) {
      return ExitCodes.INPUT_WRONG;
    }
    int remarks = opened.problems().size() + ofRoute.size();
    screen.line(remarks == 0 ? "Nothing wrong." : "Nothing wrong; " + remarks + " remarks above.");
    return ExitCodes.FINE;
  }
}
