package drumline.app.layout;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;

/** Kept layouts as JSON texts. */
public final class KeptLayoutJson {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private KeptLayoutJson() {}

  /** The layout as text. */
  public static String text(KeptLayout layout) {
    try {
      return MAPPER.writeValueAsString(layout);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the layout cannot be written as JSON", e);
    }
  }

  /**
   * The layout of a text.
   *
   * @throws IllegalArgumentException if it is no kept layout
   */
  public static KeptLayout read(String text) {
    try {
      return MAPPER.readValue(text, KeptLayout.class);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("text: no kept layout: " + e.getOriginalMessage(), e);
    }
  }
}
