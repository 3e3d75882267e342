package drumline.planner.translate;

import drumline.shop.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * How translating ended.
 *
 * @param translation the planning problem; empty if a problem is an error
 * @param problems what stands against planning, or a person must look at
 */
public record TranslationResult(Optional<Translation> translation, List<Problem> problems) {
  /** Copies the list. */
  public TranslationResult {
    problems = List.copyOf(problems);
  }
}
