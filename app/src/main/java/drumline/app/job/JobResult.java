package drumline.app.job;

import drumline.app.answer.PlacedProblem;
import java.util.List;
import java.util.Optional;

/**
 * What came of a job.
 *
 * @param layoutIds stored layouts
 * @param bestLayoutId the cheapest
 * @param words the same as a sentence
 * @param problems what stands against a layout
 */
public record JobResult(
    List<String> layoutIds,
    Optional<String> bestLayoutId,
    String words,
    List<PlacedProblem> problems) {

  /** Copies the lists. */
  public JobResult {
    layoutIds = List.copyOf(layoutIds);
    problems = List.copyOf(problems);
  }
}
