package drumline.planner.balance.text;

import drumline.planner.balance.BalanceTask;
import drumline.planner.balance.TaskCircle;
import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gathers tasks and problems while a text is read. */
final class TaskCollector {
  private record Row(int durationMs, List<String> predecessorIds, String where) {}

  private final String source;
  private final Map<String, Row> rows = new LinkedHashMap<>();
  private final List<Problem> problems = new ArrayList<>();

  TaskCollector(String source) {
    this.source = source;
  }

  void wrong(String code, int line, String found, String allowed, String hint) {
    problems.add(Problem.error(code, source + ", line " + line, found, allowed, hint));
  }

  /** A time, or −1 with a problem noted. */
  int time(String text, int line) {
    String trimmed = text.trim();
    try {
      int time = Integer.parseInt(trimmed);
      if (time < 0) {
        wrong("negative-time", line, "the time " + trimmed, "0 or more", "");
      }
      return Math.max(-1, time);
    } catch (NumberFormatException e) {
      String hint =
          trimmed.matches("[0-9]+[.,][0-9]+")
              ? "Maybe give the times in a smaller unit, such as ms."
              : "";
      wrong(
          "not-a-number",
          line,
          "the time \"" + trimmed + "\"",
          "a whole number up to " + Integer.MAX_VALUE,
          hint);
      return -1;
    }
  }

  void task(String id, int durationMs, List<String> predecessorIds, int line) {
    if (id.isBlank()) {
      wrong("missing-id", line, "a task without a name", "a name", "");
    } else if (rows.containsKey(id)) {
      wrong(
          "id-twice",
          line,
          "the task " + id + " again",
          "each name once",
          "Maybe one of the two has another name.");
    } else {
      rows.put(id, new Row(Math.max(0, durationMs), predecessorIds, source + ", line " + line));
    }
  }

  /** Everything read, with unknown names and circles found. */
  BalanceReading finish() {
    List<BalanceTask> tasks = new ArrayList<>();
    long totalMs = 0;
    for (Map.Entry<String, Row> entry : rows.entrySet()) {
      Row row = entry.getValue();
      totalMs += row.durationMs();
      for (String before : row.predecessorIds()) {
        if (!rows.containsKey(before)) {
          problems.add(
              Problem.error(
                  "unknown-id",
                  row.where(),
                  "the predecessor " + before + " of " + entry.getKey(),
                  "a task of this text",
                  ""));
        }
      }
      tasks.add(new BalanceTask(entry.getKey(), row.durationMs(), row.predecessorIds()));
    }
    if (totalMs > Integer.MAX_VALUE) {
      problems.add(
          Problem.error(
              "times-too-long",
              source,
              "times that add up to " + totalMs,
              "up to " + Integer.MAX_VALUE,
              "Maybe give the times in a larger unit."));
    }
    List<String> circle = TaskCircle.find(tasks);
    if (!circle.isEmpty()) {
      problems.add(
          Problem.error(
              "order-circle",
              source,
              "tasks that wait for one another: " + String.join(" before ", circle),
              "an order without a circle",
              "Maybe one of these is the wrong way round."));
    }
    return new BalanceReading(tasks, problems);
  }
}
