package drumline.planner.published;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Outside data that lie beside the project, not in it. */
public final class OutsideFiles {
  private OutsideFiles() {}

  /** A folder of outside data, empty where there is none. */
  public static Optional<Path> findFolder(String name) {
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      Path folder = at.resolveSibling("shared").resolve("data").resolve(name);
      if (at.getNameCount() > 0 && Files.isDirectory(folder)) {
        return Optional.of(folder);
      }
    }
    return Optional.empty();
  }

  /** The JSON files of a folder in the order of their names. */
  public static List<Path> jsonFiles(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A JSON file. */
  public static JsonNode read(Path file) {
    try {
      return new ObjectMapper().readTree(file.toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
