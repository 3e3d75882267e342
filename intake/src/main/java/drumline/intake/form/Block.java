package drumline.intake.form;

import drumline.intake.text.Node;
import drumline.intake.text.Place;
import drumline.shop.problem.Problem;
import drumline.shop.quantity.QuantityKind;
import java.util.List;
import java.util.Optional;

/**
 * A block of keys read against its form; keys that the form does not know are reported as it is
 * opened.
 */
public final class Block {

  private final Node.Keyed node;
  private final Form form;
  private final String path;
  private final Reading reading;

  private Block(Node.Keyed node, Form form, String path, Reading reading) {
    this.node = node;
    this.form = form;
    this.path = path;
    this.reading = reading;
  }

  /**
   * Opens a block.
   *
   * @param node the keys
   * @param form what is allowed
   * @param path keys that lead here, joined by dots; empty at the top
   * @param reading the run
   */
  public static Block open(Node.Keyed node, Form form, String path, Reading reading) {
    Block block = new Block(node, form, path, reading);
    for (Node.Entry entry : node.entries()) {
      if (!form.keys().contains(entry.key())) {
        reading.add(
            Problem.error(
                "unknown-key",
                entry.place().toText() + " " + block.pathOf(entry.key()),
                "the key \"" + entry.key() + "\"",
                "in " + form.name() + ": " + String.join(", ", form.keys()),
                Words.maybe(entry.key(), form.keys())));
      }
    }
    return block;
  }

  /** The field under a key, if the key stands there and holds something. */
  public Optional<Field> find(String key) {
    form.require(key);
    return node.find(key)
        .filter(value -> !value.words().equals("nothing"))
        .map(value -> new Field(value, pathOf(key), reading));
  }

  /** The field under a key; a problem where it is absent. */
  public Optional<Field> require(String key) {
    Optional<Field> field = find(key);
    if (field.isEmpty()) {
      Optional<Node.Entry> entry =
          node.entries().stream().filter(e -> e.key().equals(key)).findFirst();
      if (entry.isPresent()) {
        String where = entry.get().place().toText() + " " + pathOf(key);
        String found = "nothing after \"" + key + ":\"";
        reading.add(Problem.error("key-missing", where, found, "a value", ""));
      } else {
        report("key-missing", "no key \"" + key + "\"", "\"" + key + "\" in " + form.name(), "");
      }
    }
    return field;
  }

  /** Text under a key that must be there; empty where it is not. */
  public String text(String key) {
    return require(key).map(Field::text).orElse("");
  }

  /** Text under a key, or another where the key is absent. */
  public String text(String key, String otherwise) {
    return find(key).map(Field::text).orElse(otherwise);
  }

  /** Quantity under a key that must be there, in the kind's internal unit; NaN where it is not. */
  public double quantity(String key, QuantityKind kind, Range range) {
    return require(key).map(f -> f.quantity(kind, range)).orElse(Double.NaN);
  }

  /** Quantity under a key, or a value in the kind's internal unit where the key is absent. */
  public double quantity(String key, QuantityKind kind, Range range, double otherwise) {
    return find(key).map(f -> f.quantity(kind, range)).orElse(otherwise);
  }

  /** Plain number under a key that must be there; NaN where it is not. */
  public double number(String key, Range range) {
    return require(key).map(f -> f.number(range)).orElse(Double.NaN);
  }

  /** One of an enum's words under a key, or a constant where the key is absent. */
  public <E extends Enum<E>> E choice(String key, Class<E> kind, E otherwise) {
    return find(key).flatMap(f -> f.choice(kind)).orElse(otherwise);
  }

  /** One of an enum's words under a key that must be there; the first constant where it is not. */
  public <E extends Enum<E>> E choice(String key, Class<E> kind) {
    return require(key).flatMap(f -> f.choice(kind)).orElse(kind.getEnumConstants()[0]);
  }

  /** Items of the list under a key; none where the key is absent. */
  public List<Field> items(String key) {
    return find(key).map(Field::items).orElse(List.of());
  }

  /** The block under a key, if the key is there. */
  public Optional<Block> block(String key, Form inner) {
    return find(key).flatMap(f -> f.block(inner));
  }

  /** Adds a problem about the block as a whole. */
  public void report(String code, String found, String allowed, String hint) {
    reading.add(Problem.error(code, where(), found, allowed, hint));
  }

  /** Where the block stands, with its path. */
  public String where() {
    return path.isEmpty() ? place().toText() : place().toText() + " " + path;
  }

  /** Where the block begins. */
  public Place place() {
    return node.place();
  }

  /** The run that reads it. */
  public Reading reading() {
    return reading;
  }

  private String pathOf(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }
}
