package drumline.shop.quantity;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * A table of figures kept in a data file beside the code, with its source written in the file.
 *
 * <p>The file is text in UTF-8: lines that begin with {@code #} and a blank are remarks, one of
 * which must read {@code # source: …}; the first other line names the columns, separated by
 * semicolons; each further line is a row with as many cells. A cell may be blank.
 *
 * @param name name of the file, for messages
 * @param source what the file says of the origin of its figures
 * @param rows the rows in the order of the file
 */
public record FigureTable(String name, String source, List<Row> rows) {

  private static final String SOURCE_MARK = "# source:";
  private static final String REMARK_MARK = "# ";

  /** Copies the list of rows. */
  public FigureTable {
    rows = List.copyOf(rows);
  }

  /**
   * Reads a table that lies beside a class.
   *
   * @param beside class in whose package the file lies
   * @param name file name without folder
   * @throws IllegalStateException if the file is absent, has no source, or a row has a wrong number
   *     of cells
   */
  public static FigureTable read(Class<?> beside, String name) {
    try (InputStream stream = beside.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("data file " + name + " is missing");
      }
      return parse(name, new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException("data file " + name + " cannot be read", e);
    }
  }

  private static FigureTable parse(String name, BufferedReader reader) throws IOException {
    StringBuilder source = new StringBuilder();
    List<String> columns = List.of();
    List<Row> rows = new ArrayList<>();
    int lineNumber = 0;
    for (String line = reader.readLine(); line != null; line = reader.readLine()) {
      lineNumber++;
      if (line.startsWith(SOURCE_MARK)) {
        source
            .append(source.isEmpty() ? "" : " ")
            .append(line.substring(SOURCE_MARK.length()).trim());
      } else if (!line.isBlank() && !line.startsWith(REMARK_MARK)) {
        List<String> cells = cells(line);
        String place = name + " line " + lineNumber;
        if (columns.isEmpty()) {
          columns = cells;
        } else {
          rows.add(row(place, columns, cells));
        }
      }
    }
    if (source.isEmpty()) {
      throw new IllegalStateException("data file " + name + " names no source");
    }
    return new FigureTable(name, source.toString(), rows);
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    for (String cell : line.split(";", -1)) {
      cells.add(cell.trim());
    }
    return cells;
  }

  private static Row row(String place, List<String> columns, List<String> cells) {
    if (cells.size() != columns.size()) {
      throw new IllegalStateException(
          place + " has " + cells.size() + " cells; allowed: " + columns.size());
    }
    Map<String, String> byColumn = new TreeMap<>();
    for (int i = 0; i < cells.size(); i++) {
      byColumn.put(columns.get(i), cells.get(i));
    }
    return new Row(place, byColumn);
  }

  /**
   * One row of a table.
   *
   * @param place file and line, for messages
   * @param cells text of each cell by the name of its column
   */
  public record Row(String place, Map<String, String> cells) {

    /** Copies the map of cells. */
    public Row {
      cells = Map.copyOf(cells);
    }

    /**
     * Text of a cell; blank where nothing stands there.
     *
     * @throws IllegalStateException if the table has no such column
     */
    public String text(String column) {
      String cell = cells.get(column);
      if (cell == null) {
        throw new IllegalStateException(place + " has no column " + column);
      }
      return cell;
    }

    /**
     * Figure of a cell, in the unit that the column's name carries.
     *
     * @throws IllegalStateException if the cell is blank or no number
     */
    public double figure(String column) {
      return findFigure(column)
          .orElseThrow(() -> new IllegalStateException(place + " column " + column + " is blank"));
    }

    /**
     * Figure of a cell, or nothing where the table leaves it blank.
     *
     * @throws IllegalStateException if the cell holds something that is no number
     */
    public OptionalDouble findFigure(String column) {
      String cell = text(column);
      if (cell.isEmpty()) {
        return OptionalDouble.empty();
      }
      try {
        return OptionalDouble.of(Double.parseDouble(cell));
      } catch (NumberFormatException e) {
        throw new IllegalStateException(place + " column " + column + " holds " + cell, e);
      }
    }
  }
}
