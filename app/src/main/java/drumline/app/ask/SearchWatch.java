package drumline.app.ask;

import java.util.OptionalDouble;

/** Watches a search, and may end it. */
public interface SearchWatch {

  /**
   * Something got better.
   *
   * @param machineName machine that is planned
   * @param elapsedS time since its search began
   * @param bestS best cycle so far, if there is one
   * @param boundS no cycle can be shorter
   */
  void progress(String machineName, double elapsedS, OptionalDouble bestS, double boundS);

  /** Whether the search should end with the best so far. */
  boolean isCancelled();

  /** Nobody watches. */
  static SearchWatch silent() {
    return new SearchWatch() {
      @Override
      public void progress(
          String machineName, double elapsedS, OptionalDouble bestS, double boundS) {}

      @Override
      public boolean isCancelled() {
        return false;
      }
    };
  }
}
