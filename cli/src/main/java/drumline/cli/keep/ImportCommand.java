package drumline.cli.keep;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code drumline import}. */
@Command(
    name = "import",
    description = "Reads what an export wrote into an empty store: all of it or nothing.",
    mixinStandardHelpOptions = true)
public final class ImportCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private StorePlace place = new StorePlace();

  @Parameters(paramLabel = "DIR", description = "A folder that drumline export wrote.")
  private Path path = Path.of("");

  @Override
  public Integer call() {
    return place.show(place.store().bringIn(path), spec);
  }
}
