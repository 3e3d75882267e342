package drumline.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * The word {@code drumline} itself: shows what it can do and its version. Every command is a class
 * of its own, listed under {@code subcommands}.
 *
 * <p>Exit codes: 0 done, 1 the command failed, 2 the command line cannot be understood.
 */
@Command(
    name = "drumline",
    description = "Plans work on multi-spindle automatic lathes.",
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
    return new CommandLine(new Main());
  }

  /** Runs one command and ends the program with its exit code. */
  public static void main(String[] args) {
    System.exit(commandLine().execute(args));
  }
}
