package drumline.planner.published;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import drumline.planner.balance.BalanceProblem;
import drumline.planner.balance.BalanceResult;
import drumline.planner.balance.BalanceTask;
import drumline.planner.balance.Balancer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Published optima of the Scholl set: stations for a cycle (SALBP-1, so that many suffice and one
 * fewer does not) and cycles for a number of stations (SALBP-2).
 *
 * <p>Source: Scholl (1993), Scholl and Klein (1997, 1999), see the data folder's README.
 */
class SchollSetTest {
  private static final int MOST_TASKS = 35;
  private static final Set<String> IN_THE_TABLE =
      Set.of("Jackson", "Mertens", "Bowman", "Jaeschke", "Mansoor", "Mitchell");

  /** One row of the set: file, stations, published cycle, and how the two belong together. */
  record Row(Path file, int stationCount, int cycle, boolean isCycleGiven) {
    @Override
    public String toString() {
      return file.getFileName() + " " + stationCount + " stations, cycle " + cycle;
    }
  }

  static Stream<Row> rows() {
    List<Row> rows = new ArrayList<>();
    OutsideFiles.findFolder("salbp").map(OutsideFiles::jsonFiles).orElse(List.of()).stream()
        .forEach(file -> addRows(file, rows));
    // where the folder is absent one row stands for all, to be reported as skipped
    return rows.isEmpty() ? Stream.of(new Row(Path.of("absent"), 0, 0, true)) : rows.stream();
  }

  private static void addRows(Path file, List<Row> rows) {
    JsonNode graph = OutsideFiles.read(file);
    if (graph.get("n").asInt() > MOST_TASKS) {
      return;
    }
    if (IN_THE_TABLE.contains(graph.get("name").asText()) || graph.get("salbp2").size() > 0) {
      graph
          .get("salbp1")
          .forEach(r -> rows.add(new Row(file, r.get("m_opt").asInt(), r.get("c").asInt(), true)));
    }
    graph
        .get("salbp2")
        .forEach(r -> rows.add(new Row(file, r.get("m").asInt(), r.get("c_opt").asInt(), false)));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void balancerReachesThePublishedOptimum(Row row) {
    Assumptions.assumeTrue(row.stationCount() > 0, "the folder ../shared/data/salbp is absent");
    BalanceProblem problem = new BalanceProblem(tasks(row.file()), row.stationCount());
    BalanceResult result = Balancer.balance(problem, 20, () -> false);
    SharingCheck.check(problem, result);
    if (!row.isCycleGiven()) {
      assertThat(result.cycleMs()).isEqualTo(row.cycle());
      assertThat(result.isProvenOptimal()).isTrue();
      return;
    }
    assertThat(result.cycleMs()).isLessThanOrEqualTo(row.cycle());
    if (row.stationCount() > 1) {
      BalanceResult fewer =
          Balancer.balance(problem.withStationCount(row.stationCount() - 1), 20, () -> false);
      assertThat(fewer.lowerBoundMs()).isGreaterThan(row.cycle());
    }
  }

  private static List<BalanceTask> tasks(Path file) {
    JsonNode graph = OutsideFiles.read(file);
    List<BalanceTask> tasks = new ArrayList<>();
    for (int i = 1; i <= graph.get("n").asInt(); i++) {
      List<String> before = new ArrayList<>();
      for (JsonNode arc : graph.get("precedence")) {
        if (arc.get(1).asInt() == i) {
          before.add(arc.get(0).asText());
        }
      }
      tasks.add(new BalanceTask("" + i, graph.get("tasks").get(i - 1).asInt(), before));
    }
    return tasks;
  }
}
