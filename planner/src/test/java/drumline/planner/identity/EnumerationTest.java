package drumline.planner.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import drumline.planner.model.PlanningProblem;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The planner finds what trying everything finds, with every rule in play. */
class EnumerationTest {
  private static final int PROBLEMS_EACH = 12;

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4})
  void plannerEqualsEnumeration(int block) {
    for (int seed = block * PROBLEMS_EACH; seed < (block + 1) * PROBLEMS_EACH; seed++) {
      PlanningProblem problem = SmallProblems.of(seed);
      OptionalInt expected = SlowTwin.cycleMs(problem);
      PlanningResult result =
          Planner.plan(
              problem, new PlannerSettings(5, 1, 1), ProgressListener.silent(), Cancel.never());
      if (expected.isEmpty()) {
        assertThat(result).as("seed %d", seed).isInstanceOf(PlanningResult.Infeasible.class);
        assertThat(((PlanningResult.Infeasible) result).conflicts())
            .as("seed %d", seed)
            .isNotEmpty();
        continue;
      }
      assertThat(result).as("seed %d", seed).isInstanceOf(PlanningResult.Planned.class);
      PlanningResult.Planned planned = (PlanningResult.Planned) result;
      assertThat(planned.audit().broken()).as("seed %d", seed).isEmpty();
      assertThat(planned.cycleMs()).as("seed %d", seed).isEqualTo(expected.getAsInt());
      assertThat(planned.isProvenOptimal()).as("seed %d", seed).isTrue();
    }
  }
}
