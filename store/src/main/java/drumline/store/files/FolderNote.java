package drumline.store.files;

import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Map;
import java.util.TreeMap;

/**
 * The file that says what a folder is. It is written last, so that a folder without it is no whole
 * export.
 *
 * @param format always {@code drumline-store}
 * @param version number of the form of the tables, and so of the files
 * @param rows how many rows of each table the folder holds
 */
@JsonPropertyOrder({"format", "version", "rows"})
record FolderNote(String format, int version, Map<String, Integer> rows) {
  static final String FILE = "drumline-store.json";
  static final String FORMAT = "drumline-store";
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  FolderNote {
    rows = new TreeMap<>(rows == null ? Map.of() : rows);
  }

  String toJson() {
    try {
      return MAPPER.writeValueAsString(this) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  static FolderNote parse(String json) throws JsonProcessingException {
    return MAPPER.readValue(json, FolderNote.class);
  }
}
