package drumline.intake.edit;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Values as they are written into a file: plain where that is safe, else in double quotes. */
final class FlowText {
  private static final Pattern PLAIN =
      Pattern.compile("[\\p{L}\\p{N}.+/±°µØø⌀(][^\\n\\r\\t,\\[\\]{}#:&*!|>'\"%@`]*");
  private static final Pattern NOTHING = Pattern.compile("~|null|Null|NULL");

  private FlowText() {}

  /** A value on one line. */
  static String of(Object value) {
    if (value instanceof Map<?, ?> map) {
      return map.entrySet().stream()
          .map(e -> single(String.valueOf(e.getKey())) + ": " + of(e.getValue()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (value instanceof List<?> list) {
      return list.stream().map(FlowText::of).collect(Collectors.joining(", ", "[", "]"));
    }
    return single(String.valueOf(value));
  }

  /**
   * A value behind a key of a block: a list of blocks takes a line for each, everything else one.
   *
   * @param indent column of the key, from 0
   */
  static String behindKey(Object value, int indent) {
    if (value instanceof List<?> list
        && !list.isEmpty()
        && list.stream().allMatch(Map.class::isInstance)) {
      String start = "\n" + " ".repeat(indent + 2) + "- ";
      return list.stream().map(FlowText::of).collect(Collectors.joining(start, start, ""));
    }
    return " " + of(value);
  }

  static String single(String text) {
    boolean isPlain =
        PLAIN.matcher(text).matches()
            && text.equals(text.strip())
            && !NOTHING.matcher(text).matches();
    return isPlain ? text : quoted(text);
  }

  private static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> out.appendCodePoint(c);
              }
            });
    return out.append('"').toString();
  }
}
