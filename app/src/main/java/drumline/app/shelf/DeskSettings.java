package drumline.app.shelf;

import java.nio.file.Path;
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
}
