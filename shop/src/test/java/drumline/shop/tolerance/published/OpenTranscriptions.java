package drumline.shop.tolerance.published;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The outside data that lie beside the project, not in it. */
final class OpenTranscriptions {

  private OpenTranscriptions() {}

  /** Text of a file of {@code shared/data/tolerances}; skips the test where it is absent. */
  static String text(String name) {
    Path file = projectRoot().resolveSibling("shared/data/tolerances").resolve(name);
    assumeTrue(Files.exists(file), "skipped: no shared/data/tolerances/" + name);
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path projectRoot() {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.exists(folder.resolve("shop/pom.xml")) && folder.getParent() != null) {
      folder = folder.getParent();
    }
    return folder;
  }
}
