package drumline.cli.reference;

import drumline.app.ask.ShowSchema;
import drumline.cli.screen.ExitCodes;
import drumline.cli.screen.Screen;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code drumline schema}: the forms of the files, for editors. */
@Command(
    name = "schema",
    description = "Prints the JSON Schema of a file form, for your editor.",
    mixinStandardHelpOptions = true)
public final class SchemaCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FORM", description = "One of: ${COMPLETION-CANDIDATES}.")
  private ShowSchema.Form form = ShowSchema.Form.INQUIRY;

  @Override
  public Integer call() {
    Screen.of(spec).line(ShowSchema.text(form));
    return ExitCodes.FINE;
  }
}
