package drumline.cycle.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.cycle.clock.CycleClock;
import drumline.cycle.sample.MachineSample;
import drumline.cycle.sample.OperationSample;
import drumline.cycle.spindle.CommonSpeed;
import drumline.cycle.spindle.GripDiameters;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.machine.SpindleDrive;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Drums whose spindles are geared together. */
class CommonSpeedTest {
  private final Machine machine =
      MachineSample.machine(
          Machine.Kind.DRUM,
          5,
          0,
          new SpindleDrive(SpindleDrive.Coupling.COMMON, 100, 6000, 10, 60, 1e9, 0.2, 0),
          null);

  private Layout layout(double lastRevPerMin) {
    return new Layout(
        machine.name(),
        List.of(
            new Placement("form", "1-cross", 2000, 0),
            new Placement("drill", "2-end", 2000, 0),
            new Placement("turn", "3-cross", 2000, 0),
            new Placement("part", "4-cross", lastRevPerMin, 0)));
  }

  private static Route route(double drillTurnsCount) {
    List<Operation> operations =
        List.of(
            OperationSample.turning("form", 80),
            OperationSample.turning("drill", drillTurnsCount),
            OperationSample.turning("turn", 139),
            OperationSample.turning("part", 125));
    return new Route(operations, List.of(), List.of(), List.of());
  }

  @Test
  void theMostTurnsSetTheCycle() {
    // [BASIS] 7.1, derived: 80, 183, 139 and 125 turns at 2000 rev/min: 183·60/2000 = 5.5 s; with
    // the drill in two parts the turning tool sets 4.17 s.
    GripDiameters diameters = new GripDiameters(20, 20);
    assertThat(new CycleClock(route(183), machine, diameters).timeline(layout(2000)).cycleS())
        .isCloseTo(5.5, within(0.05));
    assertThat(new CycleClock(route(92), machine, diameters).timeline(layout(2000)).cycleS())
        .isCloseTo(4.17, within(0.005));
  }

  @Test
  void anotherSpeedIsReported() {
    assertThat(CommonSpeed.findBreach(route(183), machine, layout(2000))).isEmpty();
    assertThat(CommonSpeed.findBreach(route(183), machine, layout(1800)))
        .hasValueSatisfying(
            problem ->
                assertThat(problem.toLine())
                    .contains("{1800.0=[part], 2000.0=[drill, form, turn]}")
                    .contains("Maybe the least of them: 1800.0."));
    assertThat(CommonSpeed.findBreach(route(183), MachineSample.drum(5), layout(1800))).isEmpty();
  }
}
