package drumline.app.view;

import drumline.app.answer.PlacedProblem;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What stands around a layout.
 *
 * @param id the inquiry
 * @param revision its revision
 * @param layoutId stored layout, or null
 * @param state planned, moved, outdated or what-if
 * @param boundS bound on the cycle; empty where the text was changed since it was found
 * @param isProvenOptimal whether it was proven the best
 * @param wallMs how long the search took
 * @param notes notes of the planner
 * @param problems what is wrong or worth knowing
 * @param planningJobId job that plans it now, or null
 */
public record LayoutFrame(
    String id,
    int revision,
    @Nullable String layoutId,
    String state,
    OptionalDouble boundS,
    boolean isProvenOptimal,
    long wallMs,
    List<String> notes,
    List<PlacedProblem> problems,
    @Nullable String planningJobId) {

  /** Copies the lists. */
  public LayoutFrame {
    notes = List.copyOf(notes);
    problems = List.copyOf(problems);
  }
}
