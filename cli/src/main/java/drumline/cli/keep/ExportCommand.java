package drumline.cli.keep;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code drumline export}. */
@Command(
    name = "export",
    description = "Writes everything that is kept as plain files, in an order that never changes.",
    mixinStandardHelpOptions = true)
public final class ExportCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();
  @Mixin private StorePlace place = new StorePlace();

  @Parameters(paramLabel = "DIR", description = "A new or empty folder.")
  private Path path = Path.of("");

  @Override
  public Integer call() {
    return place.show(place.store().export(path), spec);
  }
}
