package drumline.planner.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import drumline.planner.audit.ModelAudit;
import drumline.planner.bound.CycleBound;
import drumline.planner.cpsat.LayoutSolver;
import drumline.planner.cpsat.SolverEffort;
import drumline.planner.cpsat.Watch;
import drumline.planner.model.Layout;
import drumline.planner.model.PlanningProblem;
import drumline.planner.seed.SeedSearch;
import drumline.planner.stage.ColumnBound;
import drumline.planner.stage.StagePlan;
import drumline.planner.tables.ProblemTables;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The planner and each of its methods find what trying everything finds, with every rule in play.
 * The number of problems in each of five blocks is the system property {@code drumline.seeds}.
 */
class EnumerationTest {
  private static final int PROBLEMS_EACH = Integer.getInteger("drumline.seeds", 12);

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
      checkEachMethod(seed, problem, expected.getAsInt());
    }
  }

  private static void checkEachMethod(int seed, PlanningProblem problem, int cycleMs) {
    ProblemTables tables = new ProblemTables(problem);
    int horizonMs = tables.horizonMs();
    assertThat(CycleBound.of(tables).cycleMs()).as("seed %d", seed).isLessThanOrEqualTo(cycleMs);
    assertThat(ColumnBound.findCycleMs(tables, horizonMs, 10_000, () -> false).orElseThrow())
        .as("seed %d", seed)
        .isLessThanOrEqualTo(cycleMs);
    assertThat(ColumnBound.forcedCycleMs(tables, horizonMs))
        .as("seed %d, forced", seed)
        .isLessThanOrEqualTo(cycleMs);
    for (LayoutSolver.Strength strength : LayoutSolver.Strength.values()) {
      LayoutSolver.Outcome outcome =
          new LayoutSolver(tables, 0, horizonMs, strength)
              .solve(new SolverEffort(5, 20, 1, 1), Watch.NONE);
      assertThat(outcome.layout().orElseThrow().cycleMs())
          .as("seed %d, solver %s", seed, strength)
          .isEqualTo(cycleMs);
      assertThat(outcome.lowerBoundMs()).as("seed %d", seed).isEqualTo(cycleMs);
    }
    checkStages(seed, problem, tables, cycleMs);
  }

  private static void checkStages(
      int seed, PlanningProblem problem, ProblemTables tables, int cycleMs) {
    Optional<Layout> first = new SeedSearch(tables, 1).search(200, l -> {}, () -> false);
    if (StagePlan.isSuited(tables) && first.isPresent()) {
      assertThat(ModelAudit.of(problem, first.orElseThrow()).broken())
          .as("seed %d", seed)
          .isEmpty();
      StagePlan.Outcome outcome =
          StagePlan.close(tables, first.orElseThrow(), 0, 50_000, l -> {}, () -> false);
      Layout best = outcome.best().orElseThrow();
      assertThat(ModelAudit.of(problem, best).broken()).as("seed %d", seed).isEmpty();
      assertThat(best.cycleMs()).as("seed %d, stages", seed).isEqualTo(cycleMs);
      assertThat(outcome.lowerBoundMs()).as("seed %d, stages", seed).isEqualTo(cycleMs);
    }
  }
}
