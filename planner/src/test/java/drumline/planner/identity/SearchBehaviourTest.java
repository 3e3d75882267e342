package drumline.planner.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import drumline.planner.cpsat.LayoutSolver;
import drumline.planner.cpsat.SolverEffort;
import drumline.planner.cpsat.Watch;
import drumline.planner.model.Layout;
import drumline.planner.model.PlanningProblem;
import drumline.planner.tables.ProblemTables;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How a search behaves: the same again, never worse, and stopped when asked. */
class SearchBehaviourTest {
  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void sameSettingsGiveTheSameLayout(int workerCount) {
    PlanningProblem problem = MiddlingRoutes.of(3);
    PlannerSettings settings = new PlannerSettings(1, workerCount, 7);
    PlanningResult.Planned first = plan(problem, settings);
    PlanningResult.Planned second = plan(problem, settings);
    assertThat(second.layout()).isEqualTo(first.layout());
    assertThat(second.lowerBoundMs()).isEqualTo(first.lowerBoundMs());
    assertThat(first.audit().broken()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void solverAloneGivesTheSameLayout(int workerCount) {
    ProblemTables tables = new ProblemTables(MiddlingRoutes.of(3));
    LayoutSolver.Outcome first = solve(tables, workerCount);
    LayoutSolver.Outcome second = solve(tables, workerCount);
    assertThat(first.hitWallLimit()).isFalse();
    assertThat(second).isEqualTo(first);
    assertThat(first.layout()).isPresent();
  }

  private static LayoutSolver.Outcome solve(ProblemTables tables, int workerCount) {
    LayoutSolver solver =
        new LayoutSolver(tables, 0, tables.horizonMs(), LayoutSolver.Strength.WITH_LOADS);
    return solver.solve(new SolverEffort(0.6, 60, workerCount, 5), Watch.NONE);
  }

  private static PlanningResult.Planned plan(PlanningProblem problem, PlannerSettings settings) {
    return (PlanningResult.Planned)
        Planner.plan(problem, settings, ProgressListener.silent(), Cancel.never());
  }

  @Test
  void progressNeverGetsWorse() {
    List<ProgressListener.Progress> steps = new ArrayList<>();
    PlanningResult.Planned planned =
        (PlanningResult.Planned)
            Planner.plan(
                MiddlingRoutes.of(5), new PlannerSettings(2, 2, 1), steps::add, Cancel.never());
    assertThat(steps).hasSizeGreaterThan(2);
    int lastBound = 0;
    int lastCycle = Integer.MAX_VALUE;
    for (ProgressListener.Progress step : steps) {
      int cycle = step.best().map(Layout::cycleMs).orElse(Integer.MAX_VALUE);
      assertThat(cycle).isLessThanOrEqualTo(lastCycle);
      assertThat(step.lowerBoundMs()).isBetween(lastBound, cycle);
      lastBound = step.lowerBoundMs();
      lastCycle = cycle;
    }
    assertThat(planned.cycleMs()).isEqualTo(lastCycle);
    assertThat(planned.lowerBoundMs()).isEqualTo(lastBound);
  }

  @Test
  void cancelReturnsTheBestSoFar() {
    AtomicBoolean stop = new AtomicBoolean();
    List<Layout> found = new ArrayList<>();
    PlanningResult.Planned planned =
        (PlanningResult.Planned)
            Planner.plan(
                MiddlingRoutes.of(4),
                new PlannerSettings(600, 2, 1),
                progress -> {
                  progress.best().ifPresent(found::add);
                  stop.set(progress.best().isPresent());
                },
                stop::get);
    assertThat(planned.layout()).isEqualTo(found.get(found.size() - 1));
    assertThat(planned.audit().broken()).isEmpty();
    assertThat(planned.notes()).contains("The search was stopped by hand.");
    assertThat(planned.isProvenOptimal()).isFalse();
  }

  @Test
  void nothingToPlanTakesNoTime() {
    PlanningProblem empty = PlanningProblem.of(4, List.of(), List.of());
    PlanningResult.Planned planned = plan(empty.withIndexMs(500), PlannerSettings.standard());
    assertThat(planned.isProvenOptimal()).isTrue();
    assertThat(planned.layout().placements()).isEmpty();
  }
}
