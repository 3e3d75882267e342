package drumline.intake.text;

import java.util.List;
import java.util.Optional;

/** One value of a file: a single text, a list, or a block of keys. */
public sealed interface Node {

  /** Where it begins. */
  Place place();

  /** What it is, for messages, e.g. {@code a list of 3}. */
  String words();

  /**
   * A single value, not yet understood.
   *
   * @param text what stands there; empty where nothing does
   * @param place where it begins
   */
  record Single(String text, Place place) implements Node {
    @Override
    public String words() {
      return text.isEmpty() ? "nothing" : "\"" + shortened() + "\"";
    }

    private String shortened() {
      String oneLine = text.replaceAll("\\s+", " ");
      return oneLine.length() <= 60 ? oneLine : oneLine.substring(0, 57) + "...";
    }
  }

  /**
   * A list of values.
   *
   * @param items the values, in the file's order
   * @param place where it begins
   */
  record Listing(List<Node> items, Place place) implements Node {
    /** Copies the list. */
    public Listing {
      items = List.copyOf(items);
    }

    @Override
    public String words() {
      return "a list of " + items.size();
    }
  }

  /**
   * A block of keys with their values.
   *
   * @param entries the keys, each once, in the file's order
   * @param place where it begins
   */
  record Keyed(List<Entry> entries, Place place) implements Node {
    /** Copies the list. */
    public Keyed {
      entries = List.copyOf(entries);
    }

    /** The value of a key, if the key stands there. */
    public Optional<Node> find(String key) {
      return entries.stream().filter(e -> e.key().equals(key)).map(Entry::value).findFirst();
    }

    @Override
    public String words() {
      return "a block of keys";
    }
  }

  /**
   * A key with its value.
   *
   * @param key the key as written
   * @param place where the key stands
   * @param value what it holds
   */
  record Entry(String key, Place place, Node value) {}
}
