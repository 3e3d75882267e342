package drumline.bench.line;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import drumline.bench.measure.OutsideFolder;
import drumline.planner.balance.BalanceProblem;
import drumline.planner.balance.BalanceTask;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A published graph with a number of stations and its proven shortest cycle.
 *
 * @param name file and stations
 * @param problem tasks and stations
 * @param optimumMs shortest cycle, in the source's unit
 */
record LineInstance(String name, BalanceProblem problem, int optimumMs) {

  /** All closed instances with so many tasks, by name. */
  static List<LineInstance> all(int fewestCount, int mostCount) {
    List<LineInstance> all = new ArrayList<>();
    for (Path file : OutsideFolder.jsonFiles("salbp")) {
      JsonNode graph = read(file);
      int size = graph.get("n").asInt();
      if (size >= fewestCount && size <= mostCount) {
        List<BalanceTask> tasks = tasks(graph);
        for (JsonNode row : graph.get("salbp2")) {
          if (row.has("c_opt")) {
            int stations = row.get("m").asInt();
            all.add(
                new LineInstance(
                    file.getFileName() + " " + stations,
                    new BalanceProblem(tasks, stations),
                    row.get("c_opt").asInt()));
          }
        }
      }
    }
    return all;
  }

  private static JsonNode read(Path file) {
    try {
      return new ObjectMapper().readTree(file.toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<BalanceTask> tasks(JsonNode graph) {
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
