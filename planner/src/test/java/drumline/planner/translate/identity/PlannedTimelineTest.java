package drumline.planner.translate.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.cycle.clock.CycleClock;
import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.timeline.Timeline;
import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.audit.ModelAudit;
import drumline.planner.check.TimelineAudit;
import drumline.planner.check.TimelineReport;
import drumline.planner.model.PlanningProblem;
import drumline.planner.seed.SeedSearch;
import drumline.planner.tables.ProblemTables;
import drumline.planner.translate.RouteTranslator;
import drumline.planner.translate.SpeedRefinement;
import drumline.planner.translate.Translation;
import drumline.planner.translate.TranslationResult;
import drumline.planner.translate.sample.DrumSample;
import drumline.planner.translate.sample.RouteSample;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * From route to checked timeline: the clock is never later than the planner, and an audit that
 * knows neither finds nothing. A failing seed is the test's parameter.
 */
class PlannedTimelineTest {
  private static final Part PART = DrumSample.part(30);
  private static final Bar BAR = DrumSample.bar(20);
  private static final GripDiameters DIAMETERS = GripDiameters.of(PART, BAR);

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 60);
  }

  private static void check(Route route, Machine machine) {
    TranslationResult result = RouteTranslator.translate(route, machine, PART, BAR, List.of());
    assertThat(result.problems()).isEmpty();
    Translation translation = result.translation().orElseThrow();
    drumline.planner.model.Layout planned = plan(translation.problem());
    Layout layout = translation.layout(planned);
    CycleClock clock = new CycleClock(route, machine, DIAMETERS);
    Timeline timeline = clock.timeline(layout);
    assertThat(timeline.cycleS() * 1000).isLessThanOrEqualTo(planned.cycleMs() + 1e-6);
    for (Placement p : layout.placements()) {
      double startS = timeline.findOperation(p.operationId()).orElseThrow().startS();
      boolean isBack = p.slideId().startsWith("back");
      assertThat(isBack ? 0 : startS).isLessThanOrEqualTo(p.plannedStartS() + 1e-9);
    }
    audited(route, machine, layout, timeline);
    Layout refined = SpeedRefinement.refine(route, machine, DIAMETERS, layout, Set.of());
    Timeline better = clock.timeline(refined);
    assertThat(better.cycleS()).isLessThanOrEqualTo(timeline.cycleS() + 1e-9);
    audited(route, machine, refined, better);
  }

  /** The local search alone: quick, and the same on every machine. */
  private static drumline.planner.model.Layout plan(PlanningProblem problem) {
    List<drumline.planner.model.Layout> found = new ArrayList<>();
    new SeedSearch(new ProblemTables(problem), 1).search(30_000, found::add, () -> false);
    assertThat(found).isNotEmpty();
    drumline.planner.model.Layout best = found.get(found.size() - 1);
    assertThat(ModelAudit.of(problem, best).broken()).isEmpty();
    return best;
  }

  private static void audited(Route route, Machine machine, Layout layout, Timeline timeline) {
    TimelineReport report = TimelineAudit.audit(route, machine, DIAMETERS, layout, timeline);
    assertThat(report.broken()).isEmpty();
    assertThat(report.findings()).hasSize(24);
  }

  @Test
  void aPinOnIndependentSpindles() {
    check(RouteSample.pin(), DrumSample.independent(6));
  }

  @Test
  void theSolversLayoutIsNoLongerThanPlannedEither() {
    Machine machine = DrumSample.independent(6);
    Route route = RouteSample.pin();
    Translation translation =
        RouteTranslator.translate(route, machine, PART, BAR, List.of()).translation().orElseThrow();
    PlannerSettings quick = new PlannerSettings(0.2, 1, 1);
    PlanningResult.Planned planned =
        (PlanningResult.Planned)
            Planner.plan(translation.problem(), quick, progress -> {}, Cancel.never());
    Layout layout = translation.layout(planned.layout());
    Timeline timeline = new CycleClock(route, machine, DIAMETERS).timeline(layout);
    assertThat(timeline.cycleS() * 1000).isLessThanOrEqualTo(planned.cycleMs() + 1e-6);
    assertThat(Translation.boundS(planned.lowerBoundMs(), timeline.cycleS()))
        .isLessThanOrEqualTo(timeline.cycleS());
    audited(route, machine, layout, timeline);
  }

  @Test
  void aPinOnACommonSpeed() {
    check(RouteSample.pin(), DrumSample.common(6));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void drawnRoutes(long seed) {
    check(RouteSample.drawn(seed, 8 + (int) (seed % 9)), DrumSample.independent(5));
  }
}
