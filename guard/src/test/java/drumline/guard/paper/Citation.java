package drumline.guard.paper;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A key of SOURCES.md where the tree cites it: in a Java comment, behind "Source:" or elsewhere, or
 * anywhere in a table (csv, tsv, txt) or library (yaml).
 *
 * @param file path from the project's root
 * @param line line of the key, from 1
 * @param key what stands in square brackets
 */
record Citation(String file, int line, String key) {
  /** Two signs or more: a letter alone in brackets is code or text, not a key. */
  static final String KEY = "\\[([A-Z][A-Z0-9]+(?:[-.][A-Z0-9]+)*)\\]";

  private static final Pattern KEYS = Pattern.compile(KEY);
  private static final Pattern TABLES = Pattern.compile(".*\\.(csv|tsv|txt|ya?ml)");

  /** Comments, and what could hold the beginning of one without being one. */
  private static final Pattern COMMENTS =
      Pattern.compile(
          "(?s:\"\"\".*?\"\"\")|\"(?:\\\\.|[^\"\\\\\n])*+\"|'(?:\\\\.|[^'\\\\\n])*+'"
              + "|(?<comment>(?s:/\\*.*?\\*/)|//[^\n]*)");

  /** All citations of a file, in their order; none in files that are neither Java nor tables. */
  static List<Citation> in(String file, String text) {
    if (file.endsWith(".java")) {
      return COMMENTS
          .matcher(text)
          .results()
          .filter(found -> text.charAt(found.start()) == '/')
          .flatMap(found -> keys(file, text, found.start(), found.end()))
          .toList();
    }
    return TABLES.matcher(file).matches() ? keys(file, text, 0, text.length()).toList() : List.of();
  }

  private static Stream<Citation> keys(String file, String text, int start, int end) {
    return KEYS.matcher(text)
        .region(start, end)
        .results()
        .map(found -> new Citation(file, line(text, found.start()), found.group(1)));
  }

  private static int line(String text, int place) {
    return 1 + (int) text.substring(0, place).chars().filter(sign -> sign == '\n').count();
  }

  /** The place and what is wrong there, as "file:line: what". */
  String breach(String what) {
    return file + ":" + line + ": [" + key + "] " + what;
  }
}
