package drumline.drawing.svg;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** The style of a sheet: ink, paper and one accent, light and dark. */
final class StyleSheet {

  private static final Map<String, String> LIGHT = palette("light.csv");
  private static final Map<String, String> DARK = palette("dark.csv");
  private static final Map<String, String> PAPER = palette("paper.csv");

  private StyleSheet() {}

  static String css(Look look) {
    String rules = String.join("\n", TextWidth.lines("style.css"));
    if (look == Look.PAPER) {
      return resolved(rules);
    }
    return ".drumline{"
        + variables(LIGHT)
        + "}\n@media (prefers-color-scheme:dark){.drumline{"
        + variables(DARK)
        + "}}\n@media print{.drumline{"
        + variables(PAPER)
        + "}}\n"
        + rules;
  }

  private static String resolved(String rules) {
    String text = rules;
    for (Map.Entry<String, String> entry : PAPER.entrySet()) {
      text = text.replace("var(--" + entry.getKey() + ")", entry.getValue());
    }
    return text;
  }

  private static String variables(Map<String, String> palette) {
    return palette.entrySet().stream()
        .map(entry -> "--" + entry.getKey() + ":" + entry.getValue())
        .collect(Collectors.joining(";"));
  }

  private static Map<String, String> palette(String name) {
    Map<String, String> palette = new LinkedHashMap<>();
    for (String line : TextWidth.lines(name)) {
      int comma = line.indexOf(',');
      palette.put(line.substring(0, comma), line.substring(comma + 1));
    }
    return palette;
  }
}
