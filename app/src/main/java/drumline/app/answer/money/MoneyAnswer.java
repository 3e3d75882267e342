package drumline.app.answer.money;

import drumline.app.answer.PlacedProblem;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Money of the present layout.
 *
 * @param revision revision of the inquiry that it belongs to
 * @param money the figures, or null where nothing is planned
 * @param problems what is wrong or worth knowing
 */
public record MoneyAnswer(
    int revision, @Nullable MoneyFigures money, List<PlacedProblem> problems) {
  /** Copies the lists. */
  public MoneyAnswer {
    problems = List.copyOf(problems);
  }
}
