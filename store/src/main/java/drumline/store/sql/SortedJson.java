package drumline.store.sql;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Map;

/**
 * One way to write a JSON object: keys in alphabetical order, no blanks, numbers without closing
 * noughts. A database that keeps JSON in its own form gives the same text back.
 */
public final class SortedJson {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
          .enable(SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS)
          .build();

  private SortedJson() {}

  /**
   * The same object, written our way.
   *
   * @throws IllegalArgumentException if the text is no JSON object
   */
  public static String object(String json) {
    Words.kept("json", json);
    try {
      JsonNode node = MAPPER.readTree(json);
      if (!node.isObject()) {
        throw new IllegalArgumentException("json is no object; allowed: {\"key\": value, …}");
      }
      checkTexts(node);
      return MAPPER.writeValueAsString(MAPPER.treeToValue(node, Map.class));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("json cannot be read: " + e.getOriginalMessage(), e);
    }
  }

  /** Escapes can hide a character that a database would refuse. */
  private static void checkTexts(JsonNode node) {
    if (node.isTextual()) {
      Words.kept("json", node.textValue());
    }
    node.fieldNames().forEachRemaining(key -> Words.kept("json", key));
    node.forEach(SortedJson::checkTexts);
  }
}
