package drumline.cycle.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.cycle.clock.CycleClock;
import drumline.cycle.sample.MachineSample;
import drumline.cycle.sample.OperationSample;
import drumline.cycle.spindle.GripDiameters;
import drumline.cycle.timeline.Timeline;
import drumline.shop.layout.Layout;
import drumline.shop.layout.Placement;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Operation;
import drumline.shop.operation.Route;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A drum is a synchronous transfer line: stations are positions, the transfer is the index. */
class FlowLineLawTest {

  @Test
  void slowestStationAndTransferSetTheCycle() throws IOException {
    String[] columns = row().split("\\|", -1);
    String[] stations = columns[0].trim().split(" ", -1);
    double transferS = Double.parseDouble(columns[1]);
    Machine machine = MachineSample.drum(stations.length, transferS, 12_000);
    List<Operation> operations = new ArrayList<>();
    List<Placement> placements = new ArrayList<>();
    for (int k = 0; k < stations.length; k++) {
      // At 1200 rev/min the spindle turns 20 times a second.
      String id = "station " + (k + 1);
      operations.add(OperationSample.turning(id, 20 * Double.parseDouble(stations[k])));
      placements.add(new Placement(id, (k + 1) + "-cross", 1200, 0));
    }
    Timeline timeline =
        new CycleClock(
                new Route(operations, List.of(), List.of(), List.of()),
                machine,
                new GripDiameters(20, 20))
            .timeline(new Layout(machine.name(), placements));
    assertThat(timeline.cycleS()).isCloseTo(Double.parseDouble(columns[2]), within(0.5));
    assertThat(3600 / timeline.cycleS()).isCloseTo(Double.parseDouble(columns[3]), within(0.5));
    assertThat(stations.length * timeline.cycleS())
        .isCloseTo(Double.parseDouble(columns[4]), within(0.5));
    assertThat(timeline.governing()).isEqualTo(6);
  }

  private static String row() throws IOException {
    try (InputStream in = FlowLineLawTest.class.getResourceAsStream("flow-line.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .findFirst()
          .orElseThrow();
    }
  }
}
