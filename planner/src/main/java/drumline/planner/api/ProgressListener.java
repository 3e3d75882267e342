package drumline.planner.api;

import drumline.planner.model.Layout;
import java.util.Optional;

/** Told while the planner searches; called from the planner's threads, never two at once. */
@FunctionalInterface
public interface ProgressListener {
  /**
   * Something got better.
   *
   * @param progress where the search stands
   */
  void progress(Progress progress);

  /**
   * Where a search stands.
   *
   * @param elapsedMs time since it began
   * @param best best layout so far
   * @param lowerBoundMs no cycle can be shorter
   */
  record Progress(long elapsedMs, Optional<Layout> best, int lowerBoundMs) {}

  /** Nobody listens. */
  static ProgressListener silent() {
    return progress -> {};
  }
}
