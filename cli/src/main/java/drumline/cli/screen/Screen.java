package drumline.cli.screen;

import drumline.shop.problem.Problem;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;

/** Where a command writes: results to the one side, problems and progress to the other. */
public record Screen(PrintWriter out, PrintWriter err) {
  private static final int LEAST_WIDTH = 80;
  private static final int MOST_WIDTH = 100;

  public static Screen of(CommandSpec spec) {
    return new Screen(spec.commandLine().getOut(), spec.commandLine().getErr());
  }

  /** Width that texts are laid out for: the terminal's, between 80 and 100. */
  public int width() {
    String columns = System.getenv("COLUMNS");
    int wanted = columns != null && columns.matches("\\d{1,4}") ? Integer.parseInt(columns) : 100;
    return Math.max(LEAST_WIDTH, Math.min(MOST_WIDTH, wanted));
  }

  /** One line for each problem. */
  public void problems(List<Problem> problems) {
    problems.forEach(problem -> err.println(problem.toLine()));
    err.flush();
  }

  public void line(String text) {
    out.println(text);
    out.flush();
  }
}
