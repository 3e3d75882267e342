package drumline.store.files;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Map;

/** Writes a row as JSON; the same row gives the same text on every machine. */
final class RowJson {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();
  private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");
  private static final ObjectWriter PRETTY =
      MAPPER.writer(new DefaultPrettyPrinter().withObjectIndenter(INDENT));

  private RowJson() {}

  /** Ends with a line feed. */
  static String write(TableShape shape, Map<String, Object> row) {
    ObjectNode node = MAPPER.createObjectNode();
    for (Column column : shape.columns()) {
      Object value = row.get(column.name());
      if (value != null && column.file().isEmpty()) {
        put(node, column, value);
      }
    }
    return text(node, shape.holdsManyRows()) + "\n";
  }

  private static void put(ObjectNode node, Column column, Object value) {
    switch (column.form()) {
      case WHOLE -> node.put(column.key(), (Long) value);
      case DECIMAL -> node.put(column.key(), (Double) value);
      case MOMENT -> node.put(column.key(), Instant.ofEpochMilli((Long) value).toString());
      case TEXT, JSON -> node.put(column.key(), (String) value);
    }
  }

  private static String text(ObjectNode node, boolean isLine) {
    try {
      return isLine ? MAPPER.writeValueAsString(node) : PRETTY.writeValueAsString(node);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
