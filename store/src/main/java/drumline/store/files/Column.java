package drumline.store.files;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How one column of a table stands in the files.
 *
 * @param name the column
 * @param form how it is written
 * @param need whether a row may do without it
 * @param file ending of the file beside the row that holds it, or empty where it stands in the row
 * @param words the words it may hold, or none for any
 */
record Column(String name, Form form, Need need, String file, Set<String> words) {

  /** How a column is written. */
  enum Form {
    /** A whole number. */
    WHOLE,
    /** A decimal number. */
    DECIMAL,
    /** A moment, kept in milliseconds, written as ISO 8601 in UTC. */
    MOMENT,
    /** Any text. */
    TEXT,
    /** A JSON object. */
    JSON
  }

  /** Whether a row may do without a column. */
  enum Need {
    REQUIRED,
    OPTIONAL
  }

  static Column whole(String name) {
    return new Column(name, Form.WHOLE, Need.REQUIRED, "", Set.of());
  }

  static Column decimal(String name) {
    return new Column(name, Form.DECIMAL, Need.REQUIRED, "", Set.of());
  }

  static Column moment(String name) {
    return new Column(name, Form.MOMENT, Need.REQUIRED, "", Set.of());
  }

  static Column text(String name) {
    return new Column(name, Form.TEXT, Need.REQUIRED, "", Set.of());
  }

  static Column json(String name) {
    return new Column(name, Form.JSON, Need.REQUIRED, "", Set.of());
  }

  Column orNone() {
    return new Column(name, form, Need.OPTIONAL, file, words);
  }

  Column inFile(String newFile) {
    return new Column(name, form, need, newFile, words);
  }

  Column oneOf(Enum<?>[] allowed) {
    Set<String> names =
        Arrays.stream(allowed).map(Enum::name).collect(Collectors.toUnmodifiableSet());
    return new Column(name, form, need, file, names);
  }

  /** The key in a row: the column's words run together; a moment needs no unit. */
  String key() {
    String stem = form == Form.MOMENT ? name.replaceFirst("_ms$", "") : name;
    StringBuilder key = new StringBuilder();
    for (String word : stem.split("_", -1)) {
      key.append(
          key.isEmpty() ? word : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
    }
    return key.toString();
  }
}
