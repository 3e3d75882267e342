package drumline.planner.slack.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.cycle.clock.CycleClock;
import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.Timeline;
import drumline.planner.api.Cancel;
import drumline.planner.api.Planner;
import drumline.planner.api.PlannerSettings;
import drumline.planner.api.PlanningResult;
import drumline.planner.api.ProgressListener;
import drumline.planner.check.TimelineAudit;
import drumline.planner.slack.DrivenTools;
import drumline.planner.slack.Levelling;
import drumline.planner.slack.SlackSpending;
import drumline.planner.translate.RouteTranslator;
import drumline.planner.translate.Translation;
import drumline.planner.translate.sample.DrumSample;
import drumline.planner.translate.sample.RouteSample;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.operation.CutSpec;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is done with spare time: the cycle stays, edges never cost more, pins hold. */
class SlackTest {
  private static final Part PART = DrumSample.part(30);
  private static final Bar BAR = DrumSample.bar(20);
  private static final GripDiameters DIAMETERS = GripDiameters.of(PART, BAR);
  private static final double MS = 1e-3;

  /**
   * Wear grows with the third power of the speed: Taylor's exponent 0.25 without the cut's time.
   */
  private static double wear(Operation operation, Double n) {
    return Math.pow(Math.max(n, operation.cut().toolRevPerMin()) / 1000, 3)
        + operation.cut().revolutionsCount() / 1000;
  }

  private record Bench(Route route, Machine machine, Translation translation, Layout layout) {
    static Bench of(Route route, Machine machine) {
      Translation translation =
          RouteTranslator.translate(route, machine, PART, BAR, List.of())
              .translation()
              .orElseThrow();
      PlanningResult.Planned planned =
          (PlanningResult.Planned)
              Planner.plan(
                  translation.problem(),
                  new PlannerSettings(0.2, 1, 1),
                  ProgressListener.silent(),
                  Cancel.never());
      return new Bench(route, machine, translation, translation.layout(planned.layout()));
    }

    CycleClock clock() {
      return new CycleClock(route, machine, DIAMETERS);
    }

    double cycleS(Layout one) {
      return clock().timeline(one).cycleS();
    }

    double wear(Layout one) {
      return one.placements().stream()
          .filter(p -> route.operation(p.operationId()).condition() == SpindleCondition.TURNING)
          .mapToDouble(p -> SlackTest.wear(route.operation(p.operationId()), p.spindleRevPerMin()))
          .sum();
    }

    Layout spent(Set<String> pinned, double cycleS) {
      return SlackSpending.spend(route, machine, clock(), layout, SlackTest::wear, pinned, cycleS);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void cycleStaysAndEdgesCostLess(long seed) {
    Bench bench = Bench.of(RouteSample.drawn(seed, 9), DrumSample.independent(5));
    double cycleS = bench.cycleS(bench.layout());
    Layout spent =
        SlackSpending.spend(
            bench.route(),
            bench.machine(),
            bench.clock(),
            bench.layout(),
            SlackTest::wear,
            Set.of());
    assertThat(bench.cycleS(spent)).as("seed %d", seed).isLessThanOrEqualTo(cycleS + 1e-6);
    assertThat(bench.wear(spent)).as("seed %d", seed).isLessThan(bench.wear(bench.layout()));
    Timeline timeline = bench.clock().timeline(spent);
    assertThat(
            TimelineAudit.audit(bench.route(), bench.machine(), DIAMETERS, spent, timeline)
                .isPassed())
        .as("seed %d", seed)
        .isTrue();
    for (int k = 0; k < spent.placements().size(); k++) {
      Placement before = bench.layout().placements().get(k);
      assertThat(spent.placements().get(k).spindleRevPerMin())
          .as("seed %d %s", seed, before.operationId())
          .isLessThanOrEqualTo(before.spindleRevPerMin());
    }
  }

  @Test
  void longerCyclesCostFewerEdges() {
    Bench bench = Bench.of(RouteSample.pin(), DrumSample.independent(6));
    double cycleS = bench.cycleS(bench.layout());
    Layout before = bench.spent(Set.of(), cycleS);
    for (double ratio : new double[] {1.1, 1.3, 1.6}) {
      Layout after = bench.spent(Set.of(), ratio * cycleS);
      assertThat(bench.cycleS(after)).isLessThanOrEqualTo(ratio * cycleS + 1e-6);
      assertThat(bench.wear(after)).isLessThan(bench.wear(before));
      before = after;
    }
  }

  @Test
  void pinnedSpeedsStay() {
    Bench bench = Bench.of(RouteSample.pin(), DrumSample.independent(6));
    Layout spent = bench.spent(Set.of("rough"), 2 * bench.cycleS(bench.layout()));
    assertThat(spent.placements()).anyMatch(p -> !bench.layout().placements().contains(p));
    assertThat(bench.layout().placements())
        .filteredOn(p -> p.operationId().equals("rough"))
        .allMatch(spent.placements()::contains);
  }

  @Test
  void aCommonSpeedStaysCommon() {
    Bench bench = Bench.of(RouteSample.pin(), DrumSample.common(6));
    double cycleS = bench.cycleS(bench.layout());
    Layout spent = bench.spent(Set.of(), 1.25 * cycleS);
    assertThat(bench.cycleS(spent)).isBetween(cycleS + MS, 1.25 * cycleS + 1e-6);
    List<Double> speeds =
        spent.placements().stream()
            .filter(
                p ->
                    bench.route().operation(p.operationId()).condition() == SpindleCondition.TURNING
                        && !p.slideId().startsWith("back"))
            .map(Placement::spindleRevPerMin)
            .distinct()
            .toList();
    assertThat(speeds).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(longs = {6, 7, 8})
  void levellingKeepsTheCycleAndEvensOut(long seed) {
    Bench bench = Bench.of(RouteSample.drawn(seed, 11), DrumSample.independent(5));
    Layout level =
        Levelling.level(bench.translation().problem(), bench.clock(), bench.layout(), Set.of());
    assertThat(bench.cycleS(level))
        .as("seed %d", seed)
        .isLessThanOrEqualTo(bench.cycleS(bench.layout()) + 1e-6);
    assertThat(unevennessS2(bench, level))
        .as("seed %d", seed)
        .isLessThanOrEqualTo(unevennessS2(bench, bench.layout()) + 1e-9);
  }

  private static double unevennessS2(Bench bench, Layout layout) {
    return bench.clock().timeline(layout).positions().stream()
        .mapToDouble(PositionTimeline::busyS)
        .map(s -> s * s)
        .sum();
  }

  /** The flats of the pin, milled by a driven cutter. */
  private static Route driven() {
    Route pin = RouteSample.pin();
    Operation flats = pin.operation("flats");
    CutSpec c = flats.cut();
    CutSpec cut =
        new CutSpec(
            0,
            c.fixedS(),
            0,
            c.lowestRevPerMin(),
            c.highestRevPerMin(),
            c.speedLimit(),
            4000,
            12,
            c.feedMmPerRev(),
            c.depthMm(),
            1,
            c.travelMm(),
            c.approachMm(),
            c.life());
    Operation changed = flats.withCut("flats", flats.title(), cut);
    return new Route(
        pin.operations().stream().map(o -> o.id().equals("flats") ? changed : o).toList(),
        pin.orders(),
        pin.pairs(),
        pin.problems());
  }

  @Test
  void drivenToolsAreSlowedWhereThatCostsNoTime() {
    Bench bench = Bench.of(driven(), DrumSample.independent(6));
    double cycleS = bench.cycleS(bench.layout());
    Route slow =
        DrivenTools.slow(
            bench.route(),
            bench.machine(),
            DIAMETERS,
            bench.layout(),
            SlackTest::wear,
            Set.of(),
            cycleS * 2);
    CutSpec cut = slow.operation("flats").cut();
    assertThat(cut.toolRevPerMin()).isBetween(0.6 * 4000, 0.7 * 4000);
    assertThat(cut.fixedS() * cut.toolRevPerMin()).isCloseTo(1.6 * 4000, within(1e-6));
    assertThat(slow.operation("rough")).isEqualTo(bench.route().operation("rough"));
    Route tight =
        DrivenTools.slow(
            bench.route(),
            bench.machine(),
            DIAMETERS,
            bench.layout(),
            SlackTest::wear,
            Set.of(),
            cycleS);
    assertThat(new CycleClock(tight, bench.machine(), DIAMETERS).timeline(bench.layout()).cycleS())
        .isCloseTo(cycleS, within(1e-6));
    assertThat(
            DrivenTools.slow(
                bench.route(),
                bench.machine(),
                DIAMETERS,
                bench.layout(),
                SlackTest::wear,
                Set.of("flats"),
                cycleS * 2))
        .isEqualTo(bench.route());
  }
}
