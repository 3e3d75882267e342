package drumline.planner.published;

import drumline.planner.balance.BalanceProblem;
import drumline.planner.balance.BalanceTask;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Published precedence graphs with their shortest cycles, read from the tests' data file. */
final class PublishedLines {
  private PublishedLines() {}

  /**
   * A graph with a number of stations and the published cycle.
   *
   * @param name name of the graph
   * @param problem tasks and stations
   * @param cycle shortest cycle, in the unit of the source
   */
  record Line(String name, BalanceProblem problem, int cycle) {
    @Override
    public String toString() {
      return name + ", " + problem.stationCount() + " stations: " + cycle;
    }
  }

  static List<String> lines(String file) {
    try (InputStream in = PublishedLines.class.getResourceAsStream(file)) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().filter(l -> !l.startsWith("#") && !l.isBlank()).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Line> all() {
    List<Line> all = new ArrayList<>();
    String name = "";
    List<String> times = List.of();
    List<BalanceTask> tasks = List.of();
    for (String line : lines("line-balancing.txt")) {
      List<String> words = List.of(line.split(" "));
      List<String> rest = words.subList(1, words.size());
      switch (words.get(0)) {
        case "graph" -> name = words.get(1);
        case "times" -> times = rest;
        case "arcs" -> tasks = tasks(times, rest);
        default ->
            all.add(
                new Line(
                    name,
                    new BalanceProblem(tasks, Integer.parseInt(rest.get(0))),
                    Integer.parseInt(rest.get(1))));
      }
    }
    return all;
  }

  private static List<BalanceTask> tasks(List<String> times, List<String> arcs) {
    List<BalanceTask> tasks = new ArrayList<>();
    for (int i = 1; i <= times.size(); i++) {
      String end = "-" + i;
      List<String> before =
          arcs.stream()
              .filter(a -> a.endsWith(end))
              .map(a -> a.substring(0, a.indexOf('-')))
              .toList();
      tasks.add(new BalanceTask("" + i, Integer.parseInt(times.get(i - 1)), before));
    }
    return tasks;
  }
}
