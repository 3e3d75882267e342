package drumline.route.rule;

import java.util.HashMap;
import java.util.Map;

/**
 * Stock allowances, standard times and limits that the rules work with, from the table that ships
 * with the program; each value has its unit and source there.
 */
public final class Allowances {
  private final Map<String, Double> values;
  private final Map<String, String> units;

  private Allowances(Map<String, Double> values, Map<String, String> units) {
    this.values = values;
    this.units = units;
  }

  /** The values that ship with the program. */
  public static Allowances shipped() {
    Map<String, Double> values = new HashMap<>();
    Map<String, String> units = new HashMap<>();
    for (String[] cells : TabTable.rows("allowances.tsv", 4)) {
      values.put(cells[0], Double.valueOf(cells[1]));
      units.put(cells[0], cells[2]);
    }
    return new Allowances(values, units);
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
   * @param name name in the table
   * @param amount number and the table's own unit, e.g. {@code 0.4 mm}
   * @throws IllegalArgumentException if the table has no such name, the unit is another one or the
   *     number is not finite and 0 or more
   */
  public Allowances withAmount(String name, String amount) {
    value(name);
    String unit = " " + units.get(name);
    double value = amount.endsWith(unit) ? number(amount, unit) : Double.NaN;
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "amount: " + amount + ", allowed for " + name + ": 0 or more, in" + unit);
    }
    Map<String, Double> copy = new HashMap<>(values);
    copy.put(name, value);
    return new Allowances(copy, units);
  }

  private static double number(String amount, String unit) {
    try {
      return Double.parseDouble(amount.substring(0, amount.length() - unit.length()));
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }
}
