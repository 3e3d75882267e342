package drumline.cli.keep;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code drumline restore}. */
@Command(
    name = "restore",
    description = "Brings a backup back; what was there before is kept beside it.",
    mixinStandardHelpOptions = true)
public final class RestoreCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private StorePlace place = new StorePlace();

  @Parameters(paramLabel = "FILE", description = "A file that drumline backup wrote.")
  private Path path = Path.of("");

  @Override
  public Integer call() {
    return place.show(place.store().restore(path), spec);
  }
}
