package drumline.cli.keep;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code drumline backup}. */
@Command(
    name = "backup",
    description = "Writes everything that is kept into one new file; others can go on working.",
    mixinStandardHelpOptions = true)
public final class BackupCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private StorePlace place = new StorePlace();

  @Parameters(paramLabel = "FILE", description = "The new file.")
  private Path path = Path.of("");

  @Override
  public Integer call() {
    return place.show(place.store().backUp(path), spec);
  }
}
