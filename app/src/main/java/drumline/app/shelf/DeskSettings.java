package drumline.app.shelf;

import drumline.store.api.StoreSettings;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How a desk is set up.
 *
 * @param folder folder in which inquiries are kept; made if it is not there
 * @param libraryFolder folder with library files of the user's own, or null
 * @param user name that revisions carry
 * @param mostParallelJobsCount planning jobs that run at the same time, 1 or more
 */
public record DeskSettings(
    Path folder, @Nullable Path libraryFolder, String user, int mostParallelJobsCount) {

  /**
   * Checks the settings.
   *
   * @throws IllegalArgumentException if the user is blank or no job may run
   */
  public DeskSettings {
    if (user.isBlank()) {
      throw new IllegalArgumentException("user: blank, allowed: a name");
    }
    if (mostParallelJobsCount < 1) {
      throw new IllegalArgumentException(
          "mostParallelJobsCount: " + mostParallelJobsCount + ", allowed: 1 or more");
    }
  }

  /**
   * The folder that the surroundings say, where nobody named one.
   *
   * @param environment the program's environment
   * @param home the user's home folder
   */
  public static Path usualFolder(Map<String, String> environment, Path home) {
    Map<String, String> folders = new HashMap<>(environment);
    folders.remove(StoreSettings.DATABASE_SETTING);
    return ((StoreSettings.InFolder) StoreSettings.usual(folders, home)).folder();
  }
}
