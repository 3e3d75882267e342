package drumline.step.feature;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A feature that was recognised, with the keys of the inquiry form.
 *
 * @param kind kind in the form's word
 * @param values value by key: {@link Mm}, {@link Deg}, whole numbers or words
 */
public record Found(String kind, Map<String, Object> values) {

  /** A length in mm. */
  public record Mm(double mm) {}

  /** An angle in degrees. */
  public record Deg(double deg) {}

  /** Keeps the order of the keys. */
  public Found {
    values = new LinkedHashMap<>(values);
  }

  /** A feature without values yet. */
  static Found of(String kind) {
    return new Found(kind, Map.of());
  }

  Found with(String key, Object value) {
    Found copy = new Found(kind, values);
    copy.values.put(key, value);
    return copy;
  }

  Found withMm(String key, double value) {
    return with(key, new Mm(value));
  }

  /** A length by its key. */
  public double mm(String key) {
    if (values.get(key) instanceof Mm length) {
      return length.mm();
    }
    throw new IllegalArgumentException("key: " + key + " of " + kind + " is no length");
  }

  /** A whole number by its key. */
  public int count(String key) {
    if (values.get(key) instanceof Integer count) {
      return count;
    }
    throw new IllegalArgumentException("key: " + key + " of " + kind + " is no count");
  }
}
