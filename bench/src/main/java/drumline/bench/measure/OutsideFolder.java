package drumline.bench.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Folders of outside data that lie beside the project, not in it. */
public final class OutsideFolder {
  private OutsideFolder() {}

  /** A folder of outside data, empty where there is none. */
  public static Optional<Path> find(String name) {
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      Path folder = at.resolveSibling("shared").resolve("data").resolve(name);
      if (at.getNameCount() > 0 && Files.isDirectory(folder)) {
        return Optional.of(folder);
      }
    }
    return Optional.empty();
  }

  /**
   * The JSON files of a folder, by name.
   *
   * @throws IllegalStateException if the folder is not there
   */
  public static List<Path> jsonFiles(String name) {
    Path folder =
        find(name)
            .orElseThrow(
                () ->
                    new IllegalStateException(
                        "../shared/data/" + name + " is absent: this case needs it"));
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
