package drumline.cli;

import drumline.planner.api.ProgressListener;
import java.io.PrintWriter;
import java.util.Locale;

/**
 * Shows where a search stands: one line that is written over on a terminal, plain lines elsewhere.
 */
final class ProgressLine implements ProgressListener {
  private final PrintWriter err;
  private final String name;
  private final boolean terminal;

  ProgressLine(PrintWriter err, String name) {
    this.err = err;
    this.name = name;
    this.terminal = Boolean.getBoolean("drumline.terminal");
  }

  @Override
  public void progress(Progress step) {
    String best = step.best().map(layout -> seconds(layout.cycleMs()) + " s").orElse("none yet");
    String line =
        String.format(
            Locale.ROOT,
            "%s  %5.1f s  best %s  bound %s s",
            name,
            step.elapsedMs() / 1000.0,
            best,
            seconds(step.lowerBoundMs()));
    if (terminal) {
      err.print("\r" + line + "   ");
    } else {
      err.println(line);
    }
    err.flush();
  }

  /** Ends the line on a terminal. */
  void end() {
    if (terminal) {
      err.println();
      err.flush();
    }
  }

  private static String seconds(int ms) {
    return String.format(Locale.ROOT, "%.3f", ms / 1000.0);
  }
}
