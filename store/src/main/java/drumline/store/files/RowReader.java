package drumline.store.files;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import drumline.store.sql.SortedJson;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Reads rows of one table from files, and notes what is wrong with them. */
final class RowReader {
  private static final String UNREADABLE = "import-unreadable-row";
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .build();

  private final ImportFolder folder;
  private final TableShape shape;

  RowReader(ImportFolder folder, TableShape shape) {
    this.folder = folder;
    this.shape = shape;
  }

  /** The rows of a file that can be read; each holds every column, absent ones as null. */
  List<Map<String, @Nullable Object>> rows(String file) throws IOException {
    List<Map<String, @Nullable Object>> rows = new ArrayList<>();
    Optional<String> text = folder.text(file);
    if (text.isEmpty()) {
      return rows;
    }
    List<String> pieces = shape.holdsManyRows() ? text.get().lines().toList() : List.of(text.get());
    for (int index = 0; index < pieces.size(); index++) {
      String where = shape.holdsManyRows() ? file + " line " + (index + 1) : file;
      row(file, where, pieces.get(index)).ifPresent(rows::add);
    }
    return rows;
  }

  private Optional<Map<String, @Nullable Object>> row(String file, String where, String json)
      throws IOException {
    int before = folder.problems().size();
    JsonNode node = node(where, json);
    if (node == null) {
      return Optional.empty();
    }
    Map<String, @Nullable Object> row = new HashMap<>();
    for (Column column : shape.columns()) {
      row.put(
          column.name(),
          column.file().isEmpty()
              ? value(where, node.get(column.key()), column)
              : fileBeside(file, column));
    }
    noteUnknownKeys(where, node);
    if (folder.problems().size() == before && !shape.pathOf(row).equals(file)) {
      folder.wrong(
          "import-misplaced-row",
          where,
          "its numbers are those of " + shape.pathOf(row),
          "its place");
    }
    return folder.problems().size() == before ? Optional.of(row) : Optional.empty();
  }

  private @Nullable JsonNode node(String where, String json) {
    try {
      JsonNode node = MAPPER.readTree(json);
      if (node.isObject()) {
        return node;
      }
      folder.wrong(UNREADABLE, where, "it is no JSON object", "{\"key\": value, …}");
    } catch (JsonProcessingException e) {
      folder.wrong(UNREADABLE, where, "it is no JSON: " + e.getOriginalMessage(), "a JSON object");
    }
    return null;
  }

  private void noteUnknownKeys(String where, JsonNode node) {
    Set<String> known =
        shape.columns().stream()
            .filter(column -> column.file().isEmpty())
            .map(Column::key)
            .collect(Collectors.toCollection(TreeSet::new));
    node.fieldNames()
        .forEachRemaining(
            key -> {
              if (!known.contains(key)) {
                folder.wrong(UNREADABLE, where, "unknown key " + key, String.join(", ", known));
              }
            });
  }

  private @Nullable Object fileBeside(String file, Column column) throws IOException {
    String beside = TableShape.beside(file, column);
    if (column.need() == Column.Need.OPTIONAL && !folder.has(beside)) {
      return null;
    }
    String text = folder.text(beside).orElse(null);
    if (text == null || column.form() != Column.Form.JSON) {
      return text;
    }
    try {
      return SortedJson.object(text);
    } catch (IllegalArgumentException e) {
      folder.wrong(UNREADABLE, beside, String.valueOf(e.getMessage()), "a JSON object");
      return null;
    }
  }

  private @Nullable Object value(String where, @Nullable JsonNode node, Column column) {
    if (node == null || node.isNull()) {
      if (column.need() == Column.Need.REQUIRED) {
        folder.wrong(UNREADABLE, where, "key " + column.key() + " is missing", "a value for it");
      }
      return null;
    }
    Object value =
        switch (column.form()) {
          case WHOLE ->
              node.canConvertToExactIntegral() && node.canConvertToLong() ? node.longValue() : null;
          case DECIMAL -> node.isNumber() ? node.doubleValue() : null;
          case MOMENT -> moment(node);
          case TEXT, JSON -> word(node, column);
        };
    if (value == null) {
      folder.wrong(UNREADABLE, where, "key " + column.key() + " is " + node, allowed(column));
    }
    return value;
  }

  private static @Nullable Long moment(JsonNode node) {
    try {
      return Instant.parse(node.asText()).toEpochMilli();
    } catch (DateTimeException | ArithmeticException e) {
      return null;
    }
  }

  private static @Nullable String word(JsonNode node, Column column) {
    boolean fits = column.words().isEmpty() || column.words().contains(node.asText());
    return node.isTextual() && fits ? node.textValue() : null;
  }

  private static String allowed(Column column) {
    return switch (column.form()) {
      case WHOLE -> "a whole number";
      case DECIMAL -> "a number";
      case MOMENT -> "a moment such as 2026-01-31T12:00:00.000Z";
      case TEXT, JSON ->
          column.words().isEmpty() ? "a text" : String.join(", ", new TreeSet<>(column.words()));
    };
  }
}
