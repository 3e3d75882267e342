package drumline.cycle.sequential;

import drumline.shop.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * The answer for a machine without a drum.
 *
 * @param cycle the cycle; empty if the machine cannot make the piece
 * @param problems what stands against it
 */
public record SequentialResult(Optional<SequentialCycle> cycle, List<Problem> problems) {
  /** Copies the list. */
  public SequentialResult {
    problems = List.copyOf(problems);
  }
}
