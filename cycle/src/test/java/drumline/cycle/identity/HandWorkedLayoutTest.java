package drumline.cycle.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumline.cycle.clock.CycleClock;
import drumline.cycle.sample.MachineSample;
import drumline.cycle.sample.OperationSample;
import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.SpindleSpan;
import drumline.cycle.timeline.Timeline;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.Route;
import drumline.shop.operation.SpindleCondition;
import drumline.shop.operation.WorkEnd;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Small layouts whose clock a setter can work out on paper. */
class HandWorkedLayoutTest {
  private static final GripDiameters DIAMETERS = new GripDiameters(20, 20);

  private static Timeline timeline(
      Machine machine,
      List<Operation> operations,
      List<OrderRule> orders,
      Placement... placements) {
    return new CycleClock(new Route(operations, orders, List.of(), List.of()), machine, DIAMETERS)
        .timeline(new Layout(machine.name(), List.of(placements)));
  }

  private static double startS(Timeline timeline, String id) {
    return timeline.findOperation(id).map(OperationSpan::startS).orElseThrow();
  }

  @Test
  void oneSpeedTogetherAnotherSpeedAfterwards() {
    // a: 100 turns at 3000 = 2 s from 0; b at the same speed beside it: 50 turns = 1 s from 0;
    // c at 1500: both must end, the spindle falls by 1500 in 1500/12000 = 0.125 s: from 2.125,
    // 25 turns = 1 s, to 3.125; cycle 3.125 + 0.5.
    Timeline timeline =
        timeline(
            MachineSample.drum(1),
            List.of(
                OperationSample.turning("a", 100),
                OperationSample.turning("b", 50),
                OperationSample.turning("c", 25)),
            List.of(),
            new Placement("a", "1-cross", 3000, 0),
            new Placement("b", "1-end", 3000, 0),
            new Placement("c", "1-end", 1500, 1));
    assertThat(startS(timeline, "b")).isZero();
    assertThat(startS(timeline, "c")).isCloseTo(2.125, within(1e-12));
    assertThat(timeline.cycleS()).isCloseTo(3.625, within(1e-12));
    assertThat(timeline.positions().get(0).spindle())
        .extracting(SpindleSpan::kind)
        .containsExactly(SpindleSpan.Kind.KEEP, SpindleSpan.Kind.CHANGE, SpindleSpan.Kind.KEEP);
  }

  @Test
  void oneSlideShiftsItsTool() {
    // Two tools of 1 s on one slide, 0.3 s between: 2.3 s and the index of 0.5 s.
    Timeline timeline =
        timeline(
            MachineSample.drum(1),
            List.of(OperationSample.turning("a", 50), OperationSample.turning("b", 50)),
            List.of(),
            new Placement("a", "1-cross", 3000, 0),
            new Placement("b", "1-cross", 3000, 1));
    assertThat(timeline.cycleS()).isCloseTo(2.8, within(1e-12));
  }

  @Test
  void holdingTakesTheStopAndTheOrientation() {
    // a: 1 s at 3000; stop 3000/12000 = 0.25 s, orient 0.2 s; milling 1.5 s from 1.45 to 2.95;
    // the driven drill, planned last, needs no speed but must not cut while the spindle is held,
    // though it may start as soon as that has ended: 2.95 + 0.6 = 3.55.
    Timeline timeline =
        timeline(
            MachineSample.drum(1),
            List.of(
                OperationSample.turning("a", 50),
                OperationSample.fixed("mill", SpindleCondition.HELD, 1.5),
                OperationSample.fixed("tap", SpindleCondition.TURNING_ANY, 0.6)),
            List.of(),
            new Placement("a", "1-cross", 3000, 0),
            new Placement("mill", "1-cross", 0, 1),
            new Placement("tap", "1-end", 0, 2));
    assertThat(startS(timeline, "mill")).isCloseTo(1.45, within(1e-12));
    assertThat(startS(timeline, "tap")).isCloseTo(2.95, within(1e-12));
    assertThat(timeline.workS()).isCloseTo(3.55, within(1e-12));
  }

  @Test
  void aDrivenEndToolCutsBesideAnySpeed() {
    Timeline timeline =
        timeline(
            MachineSample.drum(1),
            List.of(
                OperationSample.turning("a", 50),
                OperationSample.turning("b", 50),
                OperationSample.fixed("tap", SpindleCondition.TURNING_ANY, 2)),
            List.of(),
            new Placement("a", "1-cross", 3000, 0),
            new Placement("b", "1-cross", 4000, 1),
            new Placement("tap", "1-end", 0, 0.5));
    assertThat(startS(timeline, "tap")).isZero();
    // 1 s, tool shift 0.3 s (longer than the change of 1000/12000 s), 50 turns at 4000 = 0.75 s.
    assertThat(timeline.workS()).isCloseTo(2.05, within(1e-12));
  }

  @Test
  void slowSpindlesStartLateByWhatTheIndexDoesNotCover() {
    // Run-up 5000 rev/min each second: to 3000 from 0 or from 6000 takes 0.6 s, index 0.5 s: the
    // first cut starts at 0.1 s. Held: 6000/5000 + 0.2 = 1.4 s, so at 0.9 s.
    Machine machine = MachineSample.drum(2, 0.5, 5000);
    Timeline timeline =
        timeline(
            machine,
            List.of(
                OperationSample.turning("a", 50),
                OperationSample.fixed("mill", SpindleCondition.HELD, 1)),
            List.of(),
            new Placement("a", "1-cross", 3000, 0),
            new Placement("mill", "2-cross", 0, 0));
    assertThat(startS(timeline, "a")).isCloseTo(0.1, within(1e-12));
    assertThat(startS(timeline, "mill")).isCloseTo(0.9, within(1e-12));
    assertThat(timeline.governing()).isEqualTo(2);
    assertThat(timeline.positions().get(0).slackS()).isCloseTo(1.9 - 1.1, within(1e-12));
  }

  @Test
  void loadsThatDoNotFitTogetherFollowEachOther() {
    // 9 Nm at a 20 mm bar pull 900 N; with safety 2 and μ 0.15 that is 12 kN of the 19.2 kN left at
    // 3000 rev/min: 0.62 of the grip each. b waits until a has left the cut after 1 s.
    Timeline timeline =
        timeline(
            MachineSample.drum(1),
            List.of(
                OperationSample.withLoads(OperationSample.turning("a", 50), 9, 0),
                OperationSample.withLoads(OperationSample.turning("b", 50), 9, 0),
                OperationSample.withLoads(OperationSample.turning("light", 50), 1, 0)),
            List.of(),
            new Placement("a", "1-cross", 3000, 0),
            new Placement("b", "1-end", 3000, 0.1),
            new Placement("light", "1-end", 3000, 2));
    assertThat(startS(timeline, "b")).isCloseTo(1, within(1e-12));
    assertThat(startS(timeline, "light")).isCloseTo(2.3, within(1e-12));
  }

  @Test
  void orderAndPairRulesHoldInsideAPosition() {
    Route route =
        new Route(
            List.of(
                OperationSample.turning("drill", 50),
                OperationSample.turning("bore", 50),
                OperationSample.turning("face", 50)),
            List.of(new OrderRule("drill", "bore", "bore follows drill", "test")),
            List.of(new PairRule(PairRule.Kind.NOT_TOGETHER, "bore", "face", "meet", "test")),
            List.of());
    Machine machine = MachineSample.drum(1);
    // The bore is planned first but waits for the drill; the face is free at once, and the bore
    // waits for it as well: 50 turns at 3000 = 1 s each.
    Timeline timeline =
        new CycleClock(route, machine, DIAMETERS)
            .timeline(
                new Layout(
                    machine.name(),
                    List.of(
                        new Placement("bore", "1-end", 3000, 0),
                        new Placement("drill", "1-end", 3000, 1),
                        new Placement("face", "1-cross", 3000, 0.5))));
    assertThat(startS(timeline, "face")).isZero();
    assertThat(startS(timeline, "drill")).isZero();
    assertThat(startS(timeline, "bore")).isCloseTo(1.3, within(1e-12));
  }

  @Test
  void cutOffBarFeedAndThePickUpsRoundTrip() {
    // Last position: turn 0.2 s, cut-off not before the grip at 0.4 s, 40 turns at 2400 = 1 s, bar
    // feed 0.7 s: busy until 2.1 s. Pick-up: grip 0.4, cut-off 1.0, retract 0.5, back turning at
    // 4800 is reached meanwhile (4800/12000 = 0.4 s), 80 turns = 1 s, eject 0.6, return 0.7: 4.2 s.
    // 4.2 > 2.1 + 0.5, so the pick-up sets the cycle.
    Timeline timeline =
        timeline(
            MachineSample.drumWithPickUp(2),
            List.of(
                OperationSample.turning("turn", 8),
                OperationSample.cutOff(40),
                OperationSample.withEnd(OperationSample.turning("back", 80), WorkEnd.BACK)),
            List.of(),
            new Placement("turn", "2-end", 2400, 0),
            new Placement("cut-off", "2-cross", 2400, 1),
            new Placement("back", "back-1", 4800, 0));
    assertThat(startS(timeline, "cut-off")).isCloseTo(0.4, within(1e-12));
    assertThat(timeline.positions().get(1).busyS()).isCloseTo(2.1, within(1e-12));
    PositionTimeline back = timeline.back();
    assertThat(back.busyS()).isCloseTo(4.2, within(1e-12));
    assertThat(startS(timeline, "back")).isCloseTo(1.9, within(1e-12));
    assertThat(timeline.cycleS()).isCloseTo(4.2, within(1e-12));
    assertThat(timeline.governing()).isEqualTo(3);
    assertThat(back.slackS()).isCloseTo(0, within(1e-12));
    assertThat(timeline.positions().get(1).slackS()).isCloseTo(1.6, within(1e-12));
  }

  @Test
  void twoPickUpSpindlesHaveTwoCycles() {
    Machine machine =
        MachineSample.machine(
            Machine.Kind.DRUM, 1, 0.5, MachineSample.drive(12_000), MachineSample.pickUp(2));
    // Drum: 0.4 + 1 + 0.7 + 0.5 = 2.6 s. Round trip 3.2 s in two cycles of 2.6: slack 2.0.
    Timeline timeline =
        timeline(
            machine,
            List.of(OperationSample.cutOff(40)),
            List.of(),
            new Placement("cut-off", "1-cross", 2400, 0));
    assertThat(timeline.cycleS()).isCloseTo(2.6, within(1e-12));
    assertThat(timeline.back().slackS()).isCloseTo(2.0, within(1e-12));
  }

  @Test
  void whatCannotBePutOnTheClockIsNamed() {
    List<Operation> one = List.of(OperationSample.turning("a", 50));
    Machine machine = MachineSample.drum(1);
    assertThatThrownBy(
            () -> timeline(machine, one, List.of(), new Placement("a", "9-cross", 3000, 0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("allowed: an operation of the route on a slide of test-drum");
    assertThatThrownBy(() -> timeline(machine, one, List.of(), new Placement("a", "1-end", 0, 0)))
        .hasMessage("speed of a is 0.0 rev/min, allowed: above 0");
    Operation b = OperationSample.turning("b", 50);
    assertThatThrownBy(
            () ->
                timeline(
                    machine,
                    List.of(one.get(0), b),
                    List.of(new OrderRule("a", "b", "", ""), new OrderRule("b", "a", "", "")),
                    new Placement("a", "1-end", 3000, 0),
                    new Placement("b", "1-end", 3000, 0)))
        .hasMessageContaining("wait for each other: [a, b]");
  }
}
