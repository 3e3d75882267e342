package drumline.planner.api;

/** Asked now and then whether the search should end with what it has. */
@FunctionalInterface
public interface Cancel {
  /** True once the search should end. */
  boolean isCancelled();

  /** Never. */
  static Cancel never() {
    return () -> false;
  }
}
