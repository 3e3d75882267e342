package drumline.cli;

import drumline.cli.screen.ExitCodes;
import java.io.IOException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Says in one line what went wrong where it is the program's fault or the disk's. */
final class FaultReport implements IExecutionExceptionHandler {
  @Override
  public int handleExecutionException(
      Exception fault, CommandLine commandLine, ParseResult parsed) {
    if (fault instanceof IOException) {
      commandLine.getErr().println("error: cannot write or read: " + fault.getMessage());
      return ExitCodes.INPUT_WRONG;
    }
    commandLine.getErr().println("error: the program's own fault: " + fault);
    if (System.getenv("DRUMLINE_TRACE") == null) {
      commandLine.getErr().println("Set DRUMLINE_TRACE=1 to see where, and tell us.");
    } else {
      fault.printStackTrace(commandLine.getErr());
    }
    return ExitCodes.OUR_FAULT;
  }
}
