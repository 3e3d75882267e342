package drumline.planner.balance.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads tasks from the {@code .IN2} text of the published precedence graphs: the number of tasks,
 * their times one a line, pairs {@code i,j} (i before j, counted from 1), and {@code -1,-1} at the
 * end.
 */
public final class In2Tasks {
  private static final int MOST_TASKS = 100_000;
  private final TaskCollector collector;
  private final List<String> lines = new ArrayList<>();
  private final List<Integer> numbers = new ArrayList<>();

  private In2Tasks(String source, String text) {
    collector = new TaskCollector(source);
    List<String> all = text.lines().toList();
    for (int l = 0; l < all.size(); l++) {
      if (!all.get(l).isBlank()) {
        lines.add(all.get(l).strip());
        numbers.add(l + 1);
      }
    }
  }

  /**
   * Reads a text.
   *
   * @param source name of the text for messages, such as the file's
   * @param text the text
   */
  public static BalanceReading read(String source, String text) {
    return new In2Tasks(source, text).read();
  }

  private BalanceReading read() {
    int count = lines.isEmpty() ? -1 : count(lines.get(0));
    if (count < 0) {
      collector.wrong(
          "bad-line",
          1,
          lines.isEmpty() ? "an empty text" : lines.get(0),
          "the number of tasks, 1 to " + MOST_TASKS,
          "");
      return collector.finish();
    }
    if (lines.size() < count + 1) {
      collector.wrong(
          "bad-line",
          lastNumber(),
          (lines.size() - 1) + " times",
          count + " times, one a line",
          "");
      return collector.finish();
    }
    int[] times = new int[count];
    for (int i = 0; i < count; i++) {
      times[i] = collector.time(lines.get(i + 1), numbers.get(i + 1));
    }
    List<List<String>> before = pairs(count);
    for (int i = 0; i < count; i++) {
      collector.task(String.valueOf(i + 1), times[i], before.get(i), numbers.get(i + 1));
    }
    return collector.finish();
  }

  private static int count(String text) {
    return text.matches("[0-9]{1,6}")
            && Integer.parseInt(text) >= 1
            && Integer.parseInt(text) <= MOST_TASKS
        ? Integer.parseInt(text)
        : -1;
  }

  private int lastNumber() {
    return numbers.get(numbers.size() - 1);
  }

  private List<List<String>> pairs(int count) {
    List<List<String>> before = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      before.add(new ArrayList<>());
    }
    for (int l = count + 1; l < lines.size(); l++) {
      String compact = lines.get(l).replaceAll("\\s*,\\s*|\\s+", ",");
      if (compact.equals("-1,-1")) {
        return before;
      }
      readPair(compact, numbers.get(l), count, before);
    }
    collector.wrong(
        "no-end",
        lastNumber(),
        "the end of the text",
        "-1,-1 after the last pair",
        "Maybe the text was cut short.");
    return before;
  }

  private void readPair(String compact, int line, int count, List<List<String>> before) {
    if (!compact.matches("[0-9]{1,6},[0-9]{1,6}")) {
      collector.wrong("bad-line", line, "\"" + compact + "\"", "a pair i,j or -1,-1", "");
      return;
    }
    int comma = compact.indexOf(',');
    List<String> pair = List.of(compact.substring(0, comma), compact.substring(comma + 1));
    for (String id : pair) {
      int number = Integer.parseInt(id);
      if (number < 1 || number > count) {
        collector.wrong("unknown-id", line, "the task " + id, "1 to " + count, "");
        return;
      }
    }
    String first = String.valueOf(Integer.parseInt(pair.get(0)));
    before.get(Integer.parseInt(pair.get(1)) - 1).add(first);
  }
}
