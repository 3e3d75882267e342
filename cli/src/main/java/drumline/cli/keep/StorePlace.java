package drumline.cli.keep;

import drumline.app.keep.KeepStore;
import drumline.cli.screen.ExitCodes;
import drumline.cli.screen.Screen;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Where everything is kept: the same option in each command that needs it. */
final class StorePlace {
  @Option(
      names = "--data",
      paramLabel = "DIR",
      description = {
        "Folder in which everything is kept. By default the database of the environment's",
        "DRUMLINE_DATABASE, the folder of DRUMLINE_DATA, or drumline in the user's data folder."
      })
  private @Nullable Path folder;

  KeepStore store() {
    return KeepStore.in(
        Optional.ofNullable(folder), System.getenv(), Path.of(System.getProperty("user.home")));
  }

  int show(KeepStore.Kept kept, CommandSpec spec) {
    Screen screen = Screen.of(spec);
    screen.problems(kept.problems());
    if (kept.problems().isEmpty()) {
      screen.line(kept.text());
      return ExitCodes.FINE;
    }
    return ExitCodes.INPUT_WRONG;
  }
}
