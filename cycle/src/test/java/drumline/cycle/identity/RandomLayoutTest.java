package drumline.cycle.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.cycle.clock.CycleClock;
import drumline.cycle.sample.MachineSample;
import drumline.cycle.sample.RandomLayout;
import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.SpindleSpan;
import drumline.cycle.timeline.TimeElement;
import drumline.cycle.timeline.Timeline;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Operation;
import drumline.shop.operation.SpindleCondition;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for every layout; the seed of a failing one is the parameter. */
class RandomLayoutTest {
  private static final double ROUNDING_S = 1e-9;
  private final Machine machine = MachineSample.drum(3);

  static LongStream seeds() {
    return LongStream.range(0, 300);
  }

  private static CycleClock clock(RandomLayout drawn, Machine machine) {
    return new CycleClock(drawn.route(), machine, new GripDiameters(20, 20));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void toolsAndSpindlesHaveNoGaps(long seed) {
    RandomLayout drawn = RandomLayout.draw(seed, machine, 14);
    for (PositionTimeline position : clock(drawn, machine).timeline(drawn.layout()).positions()) {
      for (OperationSpan span : position.operations()) {
        double t = span.startS();
        for (TimeElement element : span.elements()) {
          assertThat(element.startS()).isEqualTo(t);
          t = element.endS();
        }
        assertThat(t).isEqualTo(span.endS());
      }
      double t = 0;
      for (SpindleSpan span : position.spindle()) {
        assertThat(span.startS()).isEqualTo(t);
        assertThat(span.endS()).isGreaterThan(t);
        t = span.endS();
      }
      if (!position.operations().isEmpty()) {
        assertThat(t).isEqualTo(position.busyS());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void conditionsNeverOverlapAndChangesHaveTheirTime(long seed) {
    RandomLayout drawn = RandomLayout.draw(seed, machine, 14);
    Timeline timeline = clock(drawn, machine).timeline(drawn.layout());
    for (PositionTimeline position : timeline.positions()) {
      List<OperationSpan> spans = position.operations();
      for (int i = 0; i < spans.size(); i++) {
        for (int k = i + 1; k < spans.size(); k++) {
          check(drawn, spans.get(i), spans.get(k));
        }
      }
    }
  }

  /** The pair rules in other words than the clock's; the first does not start later. */
  private static void check(RandomLayout drawn, OperationSpan one, OperationSpan other) {
    SpindleCondition a = drawn.route().operation(one.operationId()).condition();
    SpindleCondition b = drawn.route().operation(other.operationId()).condition();
    double gapS = other.startS() - one.endS() + ROUNDING_S;
    boolean bothTurn = a == SpindleCondition.TURNING && b == SpindleCondition.TURNING;
    boolean anyStands =
        List.of(SpindleCondition.HELD, SpindleCondition.C_AXIS).stream()
            .anyMatch(c -> c == a || c == b);
    if (bothTurn && one.spindleRevPerMin() != other.spindleRevPerMin()) {
      double changeS = Math.abs(one.spindleRevPerMin() - other.spindleRevPerMin()) / 12_000;
      assertThat(gapS).isGreaterThanOrEqualTo(changeS);
    }
    if (anyStands) {
      assertThat(gapS).isGreaterThanOrEqualTo(0);
      if (a == SpindleCondition.TURNING) {
        assertThat(gapS).isGreaterThanOrEqualTo(one.spindleRevPerMin() / 12_000 + 0.2);
      }
    }
    if (one.slideId().equals(other.slideId())) {
      assertThat(gapS).isGreaterThanOrEqualTo(0.3);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void loadsStayInTheirLimits(long seed) {
    RandomLayout drawn = RandomLayout.draw(seed, machine, 14);
    for (PositionTimeline position : clock(drawn, machine).timeline(drawn.layout()).positions()) {
      for (OperationSpan span : position.operations()) {
        double momentS = cutStartS(span);
        double torqueNm = 0;
        double pullN = 0;
        double n = 0;
        for (OperationSpan other : position.operations()) {
          Operation operation = drawn.route().operation(other.operationId());
          if (cutStartS(other) <= momentS && momentS < cutEndS(other) - ROUNDING_S) {
            torqueNm += operation.loads().torqueNm();
            pullN += Math.hypot(operation.loads().torqueNm() * 100, operation.loads().thrustN());
            n = Math.max(n, other.spindleRevPerMin());
          }
        }
        double gripN = 20_000 - 0.4 * 0.02 * Math.pow(n * Math.PI / 30, 2);
        assertThat(2 * pullN).isLessThanOrEqualTo(0.15 * gripN * (1 + 1e-6));
        assertThat(torqueNm * n).isLessThanOrEqualTo(9549.3 * 10 * (1 + 1e-6));
        assertThat(torqueNm).isLessThanOrEqualTo(60 * (1 + 1e-6));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void cycleIsNeverBelowItsBounds(long seed) {
    RandomLayout drawn = RandomLayout.draw(seed, machine, 14);
    Timeline timeline = clock(drawn, machine).timeline(drawn.layout());
    for (PositionTimeline position : timeline.positions()) {
      List<String> slides = position.operations().stream().map(OperationSpan::slideId).toList();
      for (String slide : slides) {
        List<OperationSpan> own =
            position.operations().stream().filter(s -> s.slideId().equals(slide)).toList();
        double loadS =
            own.stream().mapToDouble(OperationSpan::lengthS).sum() + 0.3 * (own.size() - 1);
        assertThat(timeline.workS()).isGreaterThanOrEqualTo(loadS - ROUNDING_S);
      }
      assertThat(position.slackS()).isGreaterThanOrEqualTo(0);
      assertThat(position.busyS() + position.slackS())
          .isCloseTo(timeline.workS(), org.assertj.core.api.Assertions.within(ROUNDING_S));
    }
    assertThat(timeline.positions().get(timeline.governing() - 1).slackS()).isZero();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aLoosePlanIsOnlyMovedForward(long seed) {
    RandomLayout drawn = RandomLayout.draw(seed, machine, 14);
    CycleClock clock = clock(drawn, machine);
    Timeline tight = clock.timeline(drawn.layout());
    List<Placement> loose = new ArrayList<>();
    for (Placement p : drawn.layout().placements()) {
      double startS = tight.findOperation(p.operationId()).orElseThrow().startS();
      loose.add(
          new Placement(p.operationId(), p.slideId(), p.spindleRevPerMin(), 0.2 + 1.3 * startS));
    }
    Timeline again = clock.timeline(new Layout(machine.name(), loose));
    for (Placement p : loose) {
      assertThat(again.findOperation(p.operationId()).orElseThrow().startS())
          .isLessThanOrEqualTo(p.plannedStartS());
    }
    assertThat(again.cycleS()).isLessThanOrEqualTo(tight.cycleS() + ROUNDING_S);
  }

  private static double cutStartS(OperationSpan span) {
    return span.elements().stream()
        .filter(e -> e.kind() == TimeElement.Kind.CUT)
        .mapToDouble(TimeElement::startS)
        .min()
        .orElseThrow();
  }

  private static double cutEndS(OperationSpan span) {
    return span.elements().stream()
        .filter(e -> e.kind() == TimeElement.Kind.CUT)
        .mapToDouble(TimeElement::endS)
        .max()
        .orElseThrow();
  }
}
