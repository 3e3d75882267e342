package drumline.planner.cpsat;

import com.google.ortools.Loader;
import org.jspecify.annotations.Nullable;

/** Loads the solver's native library once and remembers why it could not be loaded. */
public final class SolverLibrary {
  private static @Nullable String fault;
  private static boolean tried;

  private SolverLibrary() {}

  /** Why the solver cannot be used here, in a sentence; empty if it can. */
  public static synchronized String faultText() {
    if (!tried) {
      tried = true;
      try {
        Loader.loadNativeLibraries();
      } catch (RuntimeException | LinkageError e) {
        fault = "The solver's native library cannot be loaded here: " + e.getMessage();
      }
    }
    return fault == null ? "" : fault;
  }
}
