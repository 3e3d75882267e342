package drumline.guard.paper;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The keys of SOURCES.md: a key in square brackets alone in a row's first cell.
 *
 * @param table the page
 */
record SourceList(PageTable table) {
  /** Heading of the works that nothing in the tree needs to cite. */
  static final String UNCITED = "Background";

  private static final Pattern KEY = Pattern.compile(Citation.KEY);

  static SourceList of(String text) {
    return new SourceList(PageTable.of("SOURCES.md", text));
  }

  /** Citations of what the page does not have. */
  List<String> unlisted(List<Citation> citations) {
    Set<String> keys = table.rows().stream().map(SourceList::key).collect(Collectors.toSet());
    return citations.stream()
        .filter(citation -> !keys.contains(citation.key()))
        .map(citation -> citation.breach("is not in SOURCES.md"))
        .toList();
  }

  /** Rows of the page that nothing cites. */
  List<String> uncited(List<Citation> citations) {
    Set<String> cited = citations.stream().map(Citation::key).collect(Collectors.toSet());
    return table.rows().stream()
        .filter(row -> !row.section().equals(UNCITED))
        .filter(row -> !key(row).isEmpty() && !cited.contains(key(row)))
        .map(row -> table.breach(row, "[" + key(row) + "] is cited nowhere"))
        .toList();
  }

  /** Rows whose key an earlier row has. */
  List<String> repeated() {
    Set<String> seen = new HashSet<>();
    List<String> repeated = new ArrayList<>();
    for (PageTable.Row row : table.rows()) {
      if (!key(row).isEmpty() && !seen.add(key(row))) {
        repeated.add(table.breach(row, "[" + key(row) + "] stands twice"));
      }
    }
    return repeated;
  }

  /** The row's key; empty for rows of words that stand in place of one. */
  private static String key(PageTable.Row row) {
    Matcher matcher = KEY.matcher(row.cells().get(0));
    return matcher.matches() ? matcher.group(1) : "";
  }
}
