package drumline.cli.reference;

import drumline.app.formula.face.AskFormula;
import drumline.cli.screen.ExitCodes;
import drumline.cli.screen.Screen;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code drumline formula}: any single formula of the trade by its name. */
@Command(
    name = "formula",
    description = {
      "Computes a single formula of the trade: inputs, steps, result, range and source.",
      "Without a name it lists all; with a name alone it shows the inputs and an example."
    },
    mixinStandardHelpOptions = true)
public final class FormulaCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "NAME",
      description = "Name of the formula, such as cut-off-time.")
  private @Nullable String name;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "KEY=VALUE",
      description = "Its inputs with units, such as startDiameter=32mm.")
  private List<String> values = List.of();

  @Option(
      names = "--units",
      defaultValue = "metric",
      description = "metric or inch: what bare numbers mean and how the answer is shown.")
  private String units = "metric";

  @Option(names = "--json", description = "Answer as JSON, always in metric units.")
  private boolean json;

  @Override
  public Integer call() {
    Screen screen = Screen.of(spec);
    AskFormula.Form form = json ? AskFormula.Form.JSON : AskFormula.Form.TEXT;
    AskFormula answer =
        name == null ? AskFormula.list(form) : AskFormula.of(name, values, units, form);
    if (answer.isWrong()) {
      screen.problems(answer.problems());
      return ExitCodes.INPUT_WRONG;
    }
    screen.line(answer.text());
    return ExitCodes.FINE;
  }
}
