package drumline.planner.api;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.planner.model.Mode;
import drumline.planner.model.PlanningProblem;
import drumline.planner.model.Slide;
import drumline.planner.model.SpindleRules;
import drumline.planner.model.Task;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Without the solver's native library there is still a layout, and it says what it is worth. */
class NoSolverIdentityTest {
  private static final String FAULT = "The solver's native library cannot be loaded here: absent";

  @Test
  void localSearchAlone() {
    List<Slide> slides = new ArrayList<>();
    List<Task> tasks = new ArrayList<>();
    for (int p = 1; p <= 4; p++) {
      slides.add(new Slide("s" + p, p, 5, 0));
    }
    List<String> all = slides.stream().map(Slide::id).toList();
    for (int i = 0; i < 13; i++) {
      List<Mode> modes =
          List.of(Mode.turning(1000, 1371 + 317 * i), Mode.turning(1500, 977 + 211 * i));
      tasks.add(new Task("t" + i, "", all, modes));
    }
    // a common speed is beyond the search by stages, so only the solver could prove it
    PlanningProblem problem =
        PlanningProblem.of(4, slides, tasks)
            .withSpindle(
                new SpindleRules(
                    5000, 0, 2000, SpindleRules.Drive.COMMON_SPEED, SpindleRules.HeldWork.ALONE));
    PlanningResult.Planned planned =
        (PlanningResult.Planned)
            Planner.plan(
                problem,
                new PlannerSettings(1, 1, 1),
                ProgressListener.silent(),
                Cancel.never(),
                () -> FAULT);
    assertThat(planned.audit().broken()).isEmpty();
    assertThat(planned.isProvenOptimal()).isFalse();
    assertThat(planned.notes()).hasSize(1);
    assertThat(planned.notes().get(0))
        .startsWith(FAULT + ". The layout comes from the local search");
  }
}
