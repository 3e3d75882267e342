package drumline.planner.translate.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.cycle.clock.CycleClock;
import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.timeline.Timeline;
import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.check.TimelineAudit;
import drumline.planner.check.TimelineReport;
import drumline.planner.translate.OptionNeed;
import drumline.planner.translate.RouteTranslator;
import drumline.planner.translate.SpeedRefinement;
import drumline.planner.translate.Translation;
import drumline.planner.translate.TranslationResult;
import drumline.planner.translate.sample.DrumSample;
import drumline.planner.translate.sample.RouteSample;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * From route to checked timeline: the clock is never later than the planner, and an audit that
 * knows neither finds nothing. A failing seed is the test's parameter.
 */
class PlannedTimelineTest {
  private static final Part PART = DrumSample.part(30);
  private static final Bar BAR = DrumSample.bar(20);
  private static final GripDiameters DIAMETERS = GripDiameters.of(PART, BAR);

  private static void check(Route route, Machine machine) {
    TranslationResult result = RouteTranslator.translate(route, machine, PART, BAR, List.of());
    assertThat(result.problems()).isEmpty();
    Translation translation = result.translation().orElseThrow();
    PlanningResult answer =
        Planner.plan(
            translation.problem(), new PlannerSettings(0.1, 1, 1), progress -> {}, Cancel.never());
    assertThat(answer).isInstanceOf(PlanningResult.Planned.class);
    PlanningResult.Planned planned = (PlanningResult.Planned) answer;
    Layout layout = translation.layout(planned.layout());
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
  void aPinOnACommonSpeed() {
    check(RouteSample.pin(), DrumSample.common(6));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void drawnRoutes(long seed) {
    check(RouteSample.drawn(seed, 14), DrumSample.independent(5));
  }

  @Test
  void optionsAreListedOnceForEachSlideWithTheirPrice() {
    Layout layout = new Layout("test-drum", List.of(new Placement("flats", "3-cross", 0, 0)));
    List<OptionNeed> needs = OptionNeed.of(RouteSample.pin(), DrumSample.independent(6), layout);
    assertThat(needs).extracting(OptionNeed::slideId).containsExactly("3-cross", "3-cross");
    assertThat(needs)
        .extracting(OptionNeed::equipment)
        .containsExactly(Equipment.LIVE_TOOL, Equipment.C_AXIS);
    assertThat(needs.get(0).price().orElseThrow()).isEqualByComparingTo("9000");
    assertThat(needs.get(1).price()).isEmpty();
  }
}
