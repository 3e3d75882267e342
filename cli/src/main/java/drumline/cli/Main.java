package drumline.cli;

import drumline.cli.keep.BackupCommand;
import drumline.cli.keep.ExportCommand;
import drumline.cli.keep.ImportCommand;
import drumline.cli.keep.RestoreCommand;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * The word {@code drumline} itself: shows what it can do and its version. Every command is a class
 * of its own, listed under {@code subcommands}.
 *
 * <p>Exit codes: 0 done, 1 the program's fault, 2 input or command line wrong, 3 no layout keeps
 * all rules.
 */
@Command(
    name = "drumline",
    description = {
      "Plans work on multi-spindle automatic lathes: from a print and a yearly volume to a",
      "checked layout, its cycle and bound, loads, output, piece cost and payback.",
      "",
      "Figures are planning values; qualified people prove them on the machine."
    },
    subcommands = {
      DemoCommand.class,
      CheckCommand.class,
      TriageCommand.class,
      RouteCommand.class,
      PlanCommand.class,
      BalanceCommand.class,
      SchemaCommand.class,
      WorkbenchCommand.class,
      BackupCommand.class,
      RestoreCommand.class,
      ExportCommand.class,
      ImportCommand.class
    },
    footer = {
      "",
      "Exit codes: 0 done, 1 the program's fault, 2 input wrong, 3 no layout keeps all rules."
    },
    versionProvider = BuildVersion.class,
    mixinStandardHelpOptions = true)
public final class Main implements Runnable {

  @Spec private CommandSpec spec;

  /** Shows the help; a bare {@code drumline} is a question, not a mistake. */
  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  /** The command line with all its commands, ready to be executed. */
  static CommandLine commandLine() {
    return new CommandLine(new Main())
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setUsageHelpWidth(100)
        .setExecutionExceptionHandler(new FaultReport());
  }

  /** Runs one command and ends the program with its exit code. */
  public static void main(String[] args) {
    System.setProperty("slf4j.internal.verbosity", "ERROR"); // libraries need no log here
    System.exit(commandLine().execute(args));
  }
}
