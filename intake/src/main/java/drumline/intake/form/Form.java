package drumline.intake.form;

import java.util.List;

/**
 * The keys that one kind of block may have.
 *
 * @param name what the block is, in shop words; also its name in the JSON Schema
 * @param keys the keys, in the order a reader expects
 */
public record Form(String name, List<String> keys) {

  /** Copies the list. */
  public Form {
    keys = List.copyOf(keys);
  }

  /** A form with these keys. */
  public static Form of(String name, String... keys) {
    return new Form(name, List.of(keys));
  }

  void require(String key) {
    if (!keys.contains(key)) {
      throw new IllegalArgumentException("key: " + key + ", allowed in " + name + ": " + keys);
    }
  }
}
