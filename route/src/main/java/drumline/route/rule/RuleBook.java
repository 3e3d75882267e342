package drumline.route.rule;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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

  private static Map<String, Rule> read() {
    Map<String, Rule> rules = new LinkedHashMap<>();
    for (String[] cells : TabTable.rows("rules.tsv", 3)) {
      rules.put(cells[0], new Rule(cells[0], cells[1], cells[2]));
    }
    return rules;
  }
}
