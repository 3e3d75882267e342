package drumline.cli;

import drumline.app.answer.DeskRefusal;
import drumline.app.shelf.DeskSettings;
import drumline.cli.screen.Browser;
import drumline.cli.screen.ExitCodes;
import drumline.cli.screen.Screen;
import drumline.workbench.Workbench;
import drumline.workbench.WorkbenchSettings;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code drumline workbench}: the page in the browser, on this machine only. */
@Command(
    name = "workbench",
    description = {
      "Opens the workbench in the browser, on this machine only.",
      "Inquiries, their revisions and layouts are kept in a folder; on an empty one the worked",
      "examples are laid out. Ctrl-C ends it; a search that runs keeps its best so far."
    },
    mixinStandardHelpOptions = true)
final class WorkbenchCommand implements Callable<Integer> {
  private static final int HIGHEST_PORT = 65_535;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "8377",
      description = "Port; 0 for any that is free (default: ${DEFAULT-VALUE}).")
  private int port = 8377;

  @Option(
      names = "--data",
      paramLabel = "DIR",
      description =
          "Folder where everything is kept (default: $DRUMLINE_DATA, else drumline in"
              + " $XDG_DATA_HOME, else ~/.local/share/drumline).")
  private @Nullable Path data;

  @Option(
      names = "--library",
      paramLabel = "DIR",
      description = "Folder with materials.yaml, tools.yaml, machines.yaml of your own.")
  private @Nullable Path library;

  @Option(names = "--no-browser", description = "Only prints the address.")
  private boolean isWithoutBrowser;

  @Override
  public Integer call() throws IOException, InterruptedException {
    if (port < 0 || port > HIGHEST_PORT) {
      throw new ParameterException(
          spec.commandLine(), "--port is " + port + ", allowed: 0 to " + HIGHEST_PORT);
    }
    Screen screen = Screen.of(spec);
    Path folder =
        data != null
            ? data.toAbsolutePath()
            : DeskSettings.usualFolder(System.getenv(), Path.of(System.getProperty("user.home")));
    DeskSettings desk =
        new DeskSettings(folder, library, System.getProperty("user.name", "unknown"), 1);
    Workbench workbench;
    try {
      workbench = Workbench.start(new WorkbenchSettings(port, desk, BuildVersion.number()));
    } catch (DeskRefusal e) {
      screen.err().println("error: " + e.getMessage());
      screen.err().flush();
      return ExitCodes.INPUT_WRONG;
    }
    screen.line("Workbench: " + workbench.address());
    screen.line("Kept in:   " + workbench.place());
    screen.line("Ctrl-C ends it.");
    if (!isWithoutBrowser) {
      Browser.open(workbench.address());
    }
    workbench.layOutExamples();
    serve(workbench);
    return ExitCodes.FINE;
  }

  private static void serve(Workbench workbench) throws InterruptedException {
    CountDownLatch end = new CountDownLatch(1);
    Runtime.getRuntime().addShutdownHook(new Thread(workbench::close, "closing"));
    end.await();
  }
}
