package drumline.guard.tree;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The project's folder as it lies on disk, without what a build or an editor puts there. */
public final class ProjectTree {
  private static final Set<String> NOT_OURS = Set.of("target", ".git", ".idea", ".vscode", "out");
  private static final Set<String> BINARY =
      Set.of("png", "jpg", "pdf", "xlsx", "ttf", "woff2", "gz", "zip", "jar", "ico");

  private ProjectTree() {}

  /** The top folder: the nearest one upwards that holds the launcher and the root pom. */
  public static Path root() {
    Path folder = Path.of("").toAbsolutePath();
    while (folder != null) {
      if (Files.exists(folder.resolve("drumline")) && Files.exists(folder.resolve("check"))) {
        return folder;
      }
      folder = folder.getParent();
    }
    throw new IllegalStateException("no folder with drumline and check above the working folder");
  }

  /** Folders with a pom of their own, by name. */
  public static List<String> moduleFolders() {
    try (Stream<Path> folders = Files.list(root())) {
      return folders
          .filter(folder -> Files.exists(folder.resolve("pom.xml")))
          .map(folder -> folder.getFileName().toString())
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All text files, relative to the root. */
  public static List<Path> textFiles() {
    Path root = root();
    try (Stream<Path> files = Files.walk(root)) {
      return files
          .filter(Files::isRegularFile)
          .map(root::relativize)
          .filter(ProjectTree::isOurs)
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The text of a file given relative to the root. */
  public static String read(Path file) {
    try {
      return Files.readString(root().resolve(file));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  private static boolean isOurs(Path file) {
    for (Path part : file) {
      if (NOT_OURS.contains(part.toString())) {
        return false;
      }
    }
    String name = file.getFileName().toString();
    return !name.endsWith(".log") && !BINARY.contains(name.substring(name.lastIndexOf('.') + 1));
  }
}
