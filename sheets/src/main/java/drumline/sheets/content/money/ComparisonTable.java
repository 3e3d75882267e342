package drumline.sheets.content.money;

import drumline.sheets.content.plain.Tone;
import java.util.List;

/**
 * The same piece made in several ways, side by side.
 *
 * @param lines what is compared, with unit, top to bottom
 * @param columns ways, left to right
 */
public record ComparisonTable(List<String> lines, List<Column> columns) {

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if a column has not one value for each line
   */
  public ComparisonTable {
    lines = List.copyOf(lines);
    columns = List.copyOf(columns);
    for (Column column : columns) {
      if (column.values().size() != lines.size()) {
        throw new IllegalArgumentException(
            "columns: "
                + column.title()
                + " has "
                + column.values().size()
                + " values, allowed: "
                + lines.size());
      }
    }
  }

  /**
   * One way.
   *
   * @param title what it is called
   * @param values one for each line
   * @param tone marked for the way that the study proposes
   */
  public record Column(String title, List<String> values, Tone tone) {

    /** Copies the list. */
    public Column {
      values = List.copyOf(values);
    }
  }
}
