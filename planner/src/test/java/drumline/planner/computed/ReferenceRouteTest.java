package drumline.planner.computed;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import drumline.planner.model.PlanningProblem;
import drumline.planner.published.OutsideFiles;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The small reference routes reach their proven cycles, computed with an independent constraint
 * model (CP-SAT in OR-Tools; see the folder's README).
 */
class ReferenceRouteTest {
  @ParameterizedTest
  @CsvSource({"route-6p-x1-t3.json, 10462", "route-8p-x1-t3.json, 7971"})
  void plannerReachesTheProvenCycle(String name, int cycleMs) {
    Optional<Path> folder = OutsideFiles.findFolder("reference-routes");
    Assumptions.assumeTrue(folder.isPresent(), "../shared/data/reference-routes is absent");
    PlanningProblem problem = ReferenceRoutes.read(folder.orElseThrow().resolve(name));
    PlanningResult.Planned planned =
        (PlanningResult.Planned)
            Planner.plan(
                problem, new PlannerSettings(60, 2, 1), ProgressListener.silent(), Cancel.never());
    assertThat(planned.cycleMs()).isEqualTo(cycleMs);
    assertThat(planned.isProvenOptimal()).isTrue();
    assertThat(planned.audit().broken()).isEmpty();
  }
}
