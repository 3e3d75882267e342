package drumline.route.rule;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** All rules of the process, from the table that ships with the program. */
public final class RuleBook {
  private static final Map<String, Rule> RULES = read();

  private RuleBook() {}

  /**
   * The rule with this id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Rule rule(String id) {
    Rule rule = RULES.get(id);
    if (rule == null) {
      throw new IllegalArgumentException("id: " + id + ", allowed: " + RULES.keySet());
    }
    return rule;
  }

  /** All rules in the order of the table. */
  public static List<Rule> all() {
    return List.copyOf(RULES.values());
  }

  /** The rule with this id, if there is one. */
  public static Optional<Rule> find(String id) {
    return Optional.ofNullable(RULES.get(id));
  }

  private static Rule rule(String[] cells) {
    return new Rule(
        cells[0],
        Rule.Kind.valueOf(cells[1].toUpperCase(Locale.ROOT)),
        Rule.Freedom.valueOf(cells[2].toUpperCase(Locale.ROOT)),
        cells[3],
        cells[4]);
  }

  private static Map<String, Rule> read() {
    Map<String, Rule> rules = new LinkedHashMap<>();
    for (String[] cells : TabTable.rows("rules.tsv", 5)) {
      rules.put(cells[0], rule(cells));
    }
    return rules;
  }
}
