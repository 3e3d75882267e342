package drumline.cycle.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.cycle.sample.MachineSample;
import drumline.cycle.sample.OperationSample;
import drumline.cycle.sequential.SequentialCycle;
import drumline.cycle.sequential.SequentialPlan;
import drumline.cycle.sequential.SequentialResult;
import drumline.cycle.sequential.Step;
import drumline.cycle.spindle.GripDiameters;
import drumline.shop.machine.Equipment;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OrderRule;
import drumline.shop.operation.PairRule;
import drumline.shop.operation.Route;
import drumline.shop.operation.WorkEnd;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SequentialPlanTest {
  private final Machine machine =
      MachineSample.machine(
          Machine.Kind.TWIN_SPINDLE, 1, 0.4, MachineSample.drive(12_000), MachineSample.pickUp(1));

  private SequentialResult plan(List<OrderRule> orders, Operation... operations) {
    return SequentialPlan.of(
        new Route(List.of(operations), orders, List.of(), List.of()),
        machine,
        new GripDiameters(20, 20));
  }

  private static Operation back(String id, double turnsCount) {
    return OperationSample.withEnd(OperationSample.turning(id, turnsCount), WorkEnd.BACK);
  }

  @Test
  void bothSpindlesWorkAtTheSameTime() {
    // All at 6000 rev/min, so no speed changes, and all with the same tool on the same slide: no
    // turret index. Main: 200 turns = 2 s, grip 0.4, cut-off 100 turns = 1 s, bar feed 0.7: 4.1 s.
    // Second: grip and cut-off 1.4, retract 0.5, turret 0.4 to the back tool, 300 turns = 3 s,
    // eject 0.6, return 0.7: 6.6 s. Shared 1.4: all in sequence 4.1 + 6.6 - 1.4 = 9.3 s.
    SequentialCycle cycle =
        plan(
                List.of(),
                OperationSample.turning("a", 200),
                OperationSample.cutOff(100),
                back("b", 300))
            .cycle()
            .orElseThrow();
    assertThat(cycle.mainS()).isCloseTo(4.1, within(1e-12));
    assertThat(cycle.secondS()).isCloseTo(6.6, within(1e-12));
    assertThat(cycle.cycleS()).isCloseTo(6.6, within(1e-12));
    assertThat(cycle.allInSequenceS()).isCloseTo(9.3, within(1e-12));
  }

  @Test
  void stepsHaveNoGaps() {
    SequentialCycle cycle =
        plan(
                List.of(),
                OperationSample.turning("a", 200),
                OperationSample.cutOff(100),
                back("b", 300))
            .cycle()
            .orElseThrow();
    for (List<Step> steps : List.of(cycle.main(), cycle.second())) {
      double t = 0;
      for (Step step : steps) {
        assertThat(step.startS()).isEqualTo(t);
        t = step.endS();
      }
    }
  }

  @Test
  void workForEitherEndGoesWhereItIsInTheShadowUnlessOrderForbids() {
    Operation either =
        OperationSample.withEnd(OperationSample.turning("either", 100), WorkEnd.EITHER);
    Operation a = OperationSample.turning("a", 500);
    // Main without it: 5 s, grip 0.4, cut-off 1, feed 0.7 = 7.1 s; second with it 1.4 + 0.5 + 0.4 +
    // 1 + 0.6 + 0.7 = 4.6 s.
    SequentialCycle free =
        plan(List.of(), either, a, OperationSample.cutOff(100)).cycle().orElseThrow();
    assertThat(free.cycleS()).isCloseTo(7.1, within(1e-12));
    List<OrderRule> orders = List.of(new OrderRule("either", "a", "before", "test"));
    SequentialCycle bound =
        plan(orders, either, a, OperationSample.cutOff(100)).cycle().orElseThrow();
    assertThat(bound.cycleS()).isCloseTo(8.1, within(1e-12));
  }

  @Test
  void whatNeedsOneGripMovesTogetherOrNotAtAll() {
    Operation either =
        OperationSample.withEnd(OperationSample.turning("either", 100), WorkEnd.EITHER);
    Operation front = OperationSample.turning("front", 100);
    Operation cutOff = OperationSample.cutOff(100);
    PairRule oneGrip =
        new PairRule(PairRule.Kind.SAME_POSITION, "either", "front", "one grip", "test");
    // Free: main 1 s, grip 0.4, cut-off 1, feed 0.7 = 3.1 s, second 4.6 s: it stays at the main
    // spindle (4.1 s against 4.6). With 300 turns more at the main spindle it goes (6.1 s); bound
    // to
    // work of the main spindle it stays again (7.1 s).
    Operation more = OperationSample.turning("more", 300);
    Route free = new Route(List.of(either, front, more, cutOff), List.of(), List.of(), List.of());
    Route bound =
        new Route(List.of(either, front, more, cutOff), List.of(), List.of(oneGrip), List.of());
    GripDiameters diameters = new GripDiameters(20, 20);
    assertThat(SequentialPlan.of(free, machine, diameters).cycle().orElseThrow().cycleS())
        .isCloseTo(6.1, within(1e-12));
    assertThat(SequentialPlan.of(bound, machine, diameters).cycle().orElseThrow().cycleS())
        .isCloseTo(7.1, within(1e-12));
  }

  @Test
  void whatTheMachineCannotDoIsNamed() {
    Operation milled =
        OperationSample.withEquipment(OperationSample.turning("m", 10), Equipment.LIVE_TOOL);
    List<Problem> problems = new ArrayList<>();
    problems.addAll(plan(List.of(), milled, OperationSample.cutOff(10)).problems());
    problems.addAll(plan(List.of(), OperationSample.turning("a", 10)).problems());
    assertThat(problems).extracting(Problem::code).containsExactly("no-slide", "no-cut-off");
    assertThat(plan(List.of(), milled, OperationSample.cutOff(10)).cycle()).isEmpty();
  }
}
