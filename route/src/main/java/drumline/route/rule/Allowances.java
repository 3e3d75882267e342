package drumline.route.rule;

import java.util.HashMap;
import java.util.Map;

/**
 * Stock allowances, standard times and limits that the rules work with, from the table that ships
 * with the program; each value has its unit and source there.
 */
public final class Allowances {
  private final Map<String, Double> values;

  private Allowances(Map<String, Double> values) {
    this.values = values;
  }

  /** The values that ship with the program. */
  public static Allowances shipped() {
    Map<String, Double> values = new HashMap<>();
    for (String[] cells : TabTable.rows("allowances.tsv", 4)) {
      values.put(cells[0], Double.valueOf(cells[1]));
    }
    return new Allowances(values);
  }

  /**
   * The value of this name, in the unit of the table.
   *
   * @throws IllegalArgumentException if the table has no such name
   */
  public double value(String name) {
    Double value = values.get(name);
    if (value == null) {
      throw new IllegalArgumentException("name: " + name + ", allowed: " + values.keySet());
    }
    return value;
  }

  /**
   * A copy with one value changed.
   *
   * @throws IllegalArgumentException if the table has no such name
   */
  public Allowances withValue(String name, double value) {
    value(name);
    Map<String, Double> copy = new HashMap<>(values);
    copy.put(name, value);
    return new Allowances(copy);
  }
}
