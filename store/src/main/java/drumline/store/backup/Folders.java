package drumline.store.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Folders that serve for a moment. */
final class Folders {
  private Folders() {}

  /** The folder in which a file stands. */
  static Path of(Path file) {
    return file.toAbsolutePath().resolveSibling(".").normalize();
  }

  /** Takes away a folder that this package made, with all that is in it. */
  static void remove(Path folder) throws IOException {
    List<Path> inside;
    try (Stream<Path> all = Files.walk(folder)) {
      inside = all.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path one : inside) {
      Files.delete(one);
    }
  }
}
