package drumline.economics.triage;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Rules as a table: one a line, nine cells parted by semicolons, first line with the names of the
 * cells, lines that begin with # are remarks.
 */
public final class TriageRules {
  private static final List<String> CELLS =
      List.of("id", "scope", "measure", "sense", "fits", "look", "unit", "text", "source");
  private static final String BY_MACHINE = "machine";

  private TriageRules() {}

  /** The rules that come with the program. */
  public static List<TriageRule> shipped() {
    try (InputStream stream = TriageRules.class.getResourceAsStream("rules.csv")) {
      if (stream == null) {
        throw new IllegalStateException("rules.csv is missing beside " + TriageRules.class);
      }
      return parse(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Rules from a table.
   *
   * @throws IllegalArgumentException if a line has not nine cells or a cell has no meaning; the
   *     message names the line
   */
  public static List<TriageRule> parse(String table) {
    List<String> lines = table.lines().toList();
    return IntStream.range(0, lines.size())
        .filter(i -> !lines.get(i).isBlank() && !lines.get(i).startsWith("#"))
        .skip(1)
        .mapToObj(i -> rule(i + 1, lines.get(i)))
        .toList();
  }

  private static TriageRule rule(int line, String text) {
    String[] cells = text.split(";", -1);
    if (cells.length != CELLS.size()) {
      throw new IllegalArgumentException(
          "line " + line + ": " + cells.length + " cells, allowed: " + CELLS.size() + " " + CELLS);
    }
    return new TriageRule(
        cells[0],
        word(line, "scope", TriageRule.Scope.class, cells[1]),
        word(line, "measure", Measure.class, cells[2]),
        word(line, "sense", TriageRule.Sense.class, cells[3]),
        limit(line, "fits", cells[4]),
        limit(line, "look", cells[5]),
        cells[6],
        cells[7],
        cells[8]);
  }

  private static <E extends Enum<E>> E word(int line, String cell, Class<E> kind, String text) {
    String name = text.toUpperCase(Locale.ROOT).replace('-', '_');
    return Arrays.stream(kind.getEnumConstants())
        .filter(constant -> constant.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "line "
                        + line
                        + ", "
                        + cell
                        + ": "
                        + text
                        + ", allowed: "
                        + Arrays.toString(kind.getEnumConstants())));
  }

  private static Optional<Double> limit(int line, String cell, String text) {
    if (text.equals(BY_MACHINE)) {
      return Optional.empty();
    }
    try {
      return Optional.of(Double.parseDouble(text));
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          "line " + line + ", " + cell + ": " + text + ", allowed: a number or " + BY_MACHINE, e);
    }
  }
}
