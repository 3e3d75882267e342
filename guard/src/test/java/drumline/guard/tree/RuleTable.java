package drumline.guard.tree;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * A table of the house rules: lines of cells parted by bars; a line that begins with # is a note.
 */
public final class RuleTable {
  private RuleTable() {}

  /** The rows of a table, each with its trimmed cells. */
  public static List<List<String>> rows(String file) {
    try (InputStream stream = RuleTable.class.getResourceAsStream("/drumline/guard/" + file);
        BufferedReader reader =
            new BufferedReader(
                new InputStreamReader(
                    Objects.requireNonNull(stream, file), StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(line -> Arrays.stream(line.split("\\|", -1)).map(String::strip).toList())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All words of a table that is one long list. */
  public static Set<String> words(String file) {
    Set<String> words = new TreeSet<>();
    rows(file).forEach(row -> words.addAll(split(row.get(0))));
    return words;
  }

  /** The words of one cell, parted by spaces. */
  public static List<String> split(String cell) {
    return cell.isEmpty() ? List.of() : List.of(cell.split("\\s+", -1));
  }
}
