package drumline.guard.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * The words of GLOSSARY.md: word, meaning, and the type or module that holds it.
 *
 * @param table the page
 */
record Glossary(PageTable table) {
  private static final String PLACE = "`(\\w+)`(?: \\((\\w+)\\))?";
  private static final Pattern PLACES = Pattern.compile(PLACE);

  static Glossary of(String text) {
    return new Glossary(PageTable.of("GLOSSARY.md", text));
  }

  /**
   * Rows that point nowhere.
   *
   * @param types types of the program as "module.Type", and modules by their names
   */
  List<String> astray(Set<String> types) {
    List<String> astray = new ArrayList<>();
    for (PageTable.Row row : table.rows()) {
      String places = row.cells().get(row.cells().size() - 1);
      if (!places.matches(PLACE + "(, " + PLACE + ")*")) {
        astray.add(table.breach(row, "wants `Type` (module) or `module`, found " + places));
        continue;
      }
      PLACES
          .matcher(places)
          .results()
          .map(Glossary::name)
          .filter(name -> !types.contains(name))
          .forEach(name -> astray.add(table.breach(row, name + " is not in the tree")));
    }
    return astray;
  }

  private static String name(MatchResult place) {
    return place.group(2) == null ? place.group(1) : place.group(2) + "." + place.group(1);
  }

  /** Rows that are not behind the one before them in the alphabet. */
  List<String> disordered() {
    List<String> disordered = new ArrayList<>();
    for (int i = 1; i < table.rows().size(); i++) {
      PageTable.Row row = table.rows().get(i);
      String before = word(table.rows().get(i - 1));
      if (before.compareTo(word(row)) >= 0) {
        disordered.add(table.breach(row, word(row) + " stands behind " + before));
      }
    }
    return disordered;
  }

  private static String word(PageTable.Row row) {
    return row.cells().get(0).toLowerCase(Locale.ROOT);
  }
}
