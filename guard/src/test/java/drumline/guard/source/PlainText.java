package drumline.guard.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** What no text file of the project may hold, whatever its kind. */
final class PlainText {
  private static final int MOST_JAVA_LINES = 400;

  // The patterns are cut in two so that this file does not break them itself.
  private static final Map<String, Pattern> BANNED = new LinkedHashMap<>();

  static {
    BANNED.put("a tab", Pattern.compile("\t"));
    BANNED.put("work left open", Pattern.compile("\\b(TO" + "DO|FIX" + "ME|XX" + "X)\\b"));
    BANNED.put(
        "a folder of one machine",
        Pattern.compile(
            "(?<![\\w.\\-/}~])/(ho"
                + "me|ro"
                + "ot|wo"
                + "rk|tm"
                + "p|Us"
                + "ers)/\\w|\\b[A-Z]:\\\\\\w"));
    BANNED.put(
        "the address of a package registry",
        Pattern.compile("repo1?\\.(maven|apache)|registry\\.np" + "mjs|deb\\.deb" + "ian"));
  }

  private PlainText() {}

  /** What breaks the rules, each as "file:line: what"; empty if nothing does. */
  static List<String> breaches(String file, String text) {
    List<String> breaches = new ArrayList<>();
    List<String> lines = text.lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      int number = i + 1;
      BANNED.forEach(
          (what, pattern) -> {
            if (pattern.matcher(line).find() && !isTabbed(file, what)) {
              breaches.add(file + ":" + number + ": " + what + ": " + line.strip());
            }
          });
    }
    if (file.endsWith(".java") && lines.size() > MOST_JAVA_LINES) {
      breaches.add(file + ":1: " + lines.size() + " lines, allowed " + MOST_JAVA_LINES);
    }
    return breaches;
  }

  /** Tables parted by tabs are a kind of data file. */
  private static boolean isTabbed(String file, String what) {
    return what.equals("a tab") && (file.endsWith(".tsv") || file.contains("/src/test/resources/"));
  }
}
