package drumline.planner.balance.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Reads tasks from lines {@code id,time,predecessors}: fields parted by commas, predecessors by
 * spaces or semicolons, fields may stand in double quotes; a first line whose time is a word is a
 * heading; empty lines and lines that begin with # are passed over.
 */
public final class CsvTasks {
  private CsvTasks() {}

  /**
   * Reads a text.
   *
   * @param source name of the text for messages, such as the file's
   * @param text the text
   */
  public static BalanceReading read(String source, String text) {
    TaskCollector collector = new TaskCollector(source);
    List<String> lines = text.lines().toList();
    boolean first = true;
    for (int l = 0; l < lines.size(); l++) {
      String line = l == 0 ? withoutByteOrderMark(lines.get(0)) : lines.get(l);
      if (line.isBlank() || line.stripLeading().startsWith("#")) {
        continue;
      }
      readLine(collector, fields(line), l + 1, first);
      first = false;
    }
    if (first) {
      collector.wrong(
          "no-tasks", Math.max(1, lines.size()), "no task", "lines id,time,predecessors", "");
    }
    return collector.finish();
  }

  private static String withoutByteOrderMark(String line) {
    return line.startsWith("\uFEFF") ? line.substring(1) : line;
  }

  private static void readLine(
      TaskCollector collector, List<String> fields, int line, boolean first) {
    if (first && fields.size() >= 2 && fields.get(1).matches("\\p{Alpha}[\\p{Alpha} _()-]*")) {
      return;
    }
    if (fields.size() < 2 || fields.size() > 3) {
      collector.wrong(
          "bad-line",
          line,
          fields.size() + " fields",
          "id,time,predecessors",
          "Maybe part the predecessors by spaces or semicolons.");
      return;
    }
    int time = collector.time(fields.get(1), line);
    String before = fields.size() == 3 ? fields.get(2) : "";
    List<String> ids =
        Arrays.stream(before.split("[ ;\\t]+")).filter(s -> !s.isEmpty()).distinct().toList();
    collector.task(fields.get(0), time, ids, line);
  }

  private static List<String> fields(String line) {
    List<String> fields = new ArrayList<>();
    StringBuilder field = new StringBuilder();
    boolean quoted = false;
    for (int c = 0; c < line.length(); c++) {
      char letter = line.charAt(c);
      if (letter == '"') {
        quoted = !quoted;
      } else if (letter == ',' && !quoted) {
        fields.add(field.toString().strip());
        field.setLength(0);
      } else {
        field.append(letter);
      }
    }
    fields.add(field.toString().strip());
    return fields;
  }
}
