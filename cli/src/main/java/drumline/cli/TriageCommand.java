package drumline.cli;

import drumline.app.ask.ListInquiry;
import drumline.app.ask.Opened;
import drumline.cli.screen.ExitCodes;
import drumline.cli.screen.Screen;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code drumline triage}: does the piece belong on a multi-spindle, and on which? */
@Command(
    name = "triage",
    description = {
      "Says in a second whether the piece belongs on a multi-spindle lathe,",
      "rule by rule with its figure and limit, and which machines of the library fit."
    },
    mixinStandardHelpOptions = true)
final class TriageCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private InquiryFile inquiry = new InquiryFile();

  @Override
  public Integer call() {
    Screen screen = Screen.of(spec);
    Opened opened = inquiry.open(screen);
    if (opened.isWrong()) {
      return ExitCodes.INPUT_WRONG;
    }
    screen.line(ListInquiry.triage(opened.inquiry()));
    return ExitCodes.FINE;
  }
}
