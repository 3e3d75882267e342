package drumline.route.rule;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Stock allowances, standard times and limits that the rules work with, from the table that ships
 * with the program; each value has its unit and source there.
 */
public final class Allowances {
  private final Map<String, Row> rows;

  private Allowances(Map<String, Row> rows) {
    this.rows = rows;
  }

  /** The values that ship with the program. */
  public static Allowances shipped() {
    Map<String, Row> rows = new LinkedHashMap<>();
    for (String[] cells : TabTable.rows("allowances.tsv", 4)) {
      rows.put(cells[0], new Row(cells[0], cells[1], cells[2], cells[3]));
    }
    return new Allowances(rows);
  }

  /**
   * The value of this name, in the unit of the table.
   *
   * @throws IllegalArgumentException if the table has no such name
   */
  public double value(String name) {
    return row(name).value();
  }

  private Row row(String name) {
    Row row = rows.get(name);
    if (row == null) {
      throw new IllegalArgumentException("name: " + name + ", allowed: " + rows.keySet());
    }
    return row;
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
    Row row = row(name);
    return findWithAmount(name, amount)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "amount: "
                        + amount
                        + ", allowed for "
                        + name
                        + ": 0 or more, in "
                        + row.unit()));
  }

  /** A copy with one value changed, if the table has the name and the amount is in its unit. */
  public Optional<Allowances> findWithAmount(String name, String amount) {
    Row row = rows.get(name);
    if (row == null) {
      return Optional.empty();
    }
    String unit = " " + row.unit();
    double value = amount.endsWith(unit) ? number(amount, unit) : Double.NaN;
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      return Optional.empty();
    }
    Map<String, Row> copy = new LinkedHashMap<>(rows);
    String number = amount.substring(0, amount.length() - unit.length());
    copy.put(name, new Row(name, number, row.unit(), row.source()));
    return Optional.of(new Allowances(copy));
  }

  private static double number(String amount, String unit) {
    try {
      return Double.parseDouble(amount.substring(0, amount.length() - unit.length()));
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  /** The allowances as a table, by name in the order of the file. */
  public List<Row> rows() {
    return List.copyOf(rows.values());
  }

  /** A row of the table, if it has the name. */
  public Optional<Row> findRow(String name) {
    return Optional.ofNullable(rows.get(name));
  }

  /**
   * One allowance.
   *
   * @param name its name
   * @param number its number, as written
   * @param unit unit of the number
   * @param source what it is, and where it comes from
   */
  public record Row(String name, String number, String unit, String source) {

    double value() {
      return Double.parseDouble(number);
    }

    /** Number and unit. */
    public String amount() {
      return number + " " + unit;
    }
  }
}
