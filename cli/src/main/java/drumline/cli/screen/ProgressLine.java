package drumline.cli.screen;

import drumline.app.ask.SearchWatch;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Shows where a search stands: one line that is written over on a terminal, plain lines elsewhere.
 * The launcher says with {@code drumline.terminal} which it is.
 */
public final class ProgressLine implements SearchWatch {
  private final PrintWriter err;
  private final Interrupt interrupt;
  private final boolean terminal = Boolean.getBoolean("drumline.terminal");
  private boolean open;

  /** A line for a search that Ctrl-C ends. */
  public ProgressLine(PrintWriter err, Interrupt interrupt) {
    this.err = err;
    this.interrupt = interrupt;
  }

  @Override
  public void progress(String machineName, double elapsedS, OptionalDouble bestS, double boundS) {
    String best =
        bestS.isPresent() ? String.format(Locale.ROOT, "%.3f s", bestS.getAsDouble()) : "none yet";
    String line =
        String.format(
            Locale.ROOT, "%s  %5.1f s  best %s  bound %.3f s", machineName, elapsedS, best, boundS);
    if (terminal) {
      err.print("\r" + line + "   ");
      open = true;
    } else {
      err.println(line);
    }
    err.flush();
  }

  @Override
  public boolean isCancelled() {
    return interrupt.isCancelled();
  }

  /** Ends the line on a terminal. */
  public void end() {
    if (open) {
      err.println();
      err.flush();
    }
  }
}
