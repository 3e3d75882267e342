package drumline.intake;

import java.nio.file.Files;
import java.nio.file.Path;

/** Finds the folder of the whole project from a module's folder. */
public final class ProjectRoot {

  private ProjectRoot() {}

  /** The folder that holds the examples. */
  public static Path find() {
    Path folder = Path.of("").toAbsolutePath();
    while (folder != null && !Files.isDirectory(folder.resolve("examples"))) {
      folder = folder.getParent();
    }
    if (folder == null) {
      throw new IllegalStateException("no folder with examples above the working folder");
    }
    return folder;
  }
}
