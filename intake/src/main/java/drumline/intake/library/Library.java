package drumline.intake.library;

import drumline.intake.form.Field;
import drumline.intake.form.Reading;
import drumline.intake.form.Words;
import drumline.intake.text.Node;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** The entries of one kind of library by name, as shipped and as the user changed them. */
final class Library {

  static final String FROM = "from";
  static final String NAME = "name";

  private final LibraryKind kind;
  private final Reading reading;
  private final Map<String, Node.Keyed> entries = new LinkedHashMap<>();
  private final List<LibraryChange> changes = new ArrayList<>();
  private final Set<String> touched = new HashSet<>();

  Library(LibraryKind kind, Reading reading) {
    this.kind = kind;
    this.reading = reading;
  }

  /** Takes in the entries of a file; entries of the same name replace earlier ones. */
  void add(List<Field> items, Origin origin) {
    for (Field item : items) {
      if (item.node() instanceof Node.Keyed keyed) {
        name(item, keyed).ifPresent(name -> add(name, item, keyed, origin));
      } else {
        item.report("wrong-kind", item.node().words(), "a block that begins with \"name:\"", "");
      }
    }
  }

  /** Changes single figures of an entry. */
  void change(Field.Named named) {
    Node.Keyed base = entries.get(named.name());
    if (base == null) {
      reportUnknown(named.field(), named.name());
    } else if (named.field().node() instanceof Node.Keyed own) {
      touched.add(named.name());
      entries.put(named.name(), over(base, own, kind.word() + " " + named.name()));
    } else {
      named
          .field()
          .report("wrong-kind", named.field().node().words(), "a block of the keys to change", "");
    }
  }

  private Optional<String> name(Field item, Node.Keyed keyed) {
    if (keyed.find(NAME).orElse(null) instanceof Node.Single single && !single.text().isBlank()) {
      return Optional.of(single.text().strip());
    }
    item.report("key-missing", "no \"name\"", "a name for each " + kind.word(), "");
    return Optional.empty();
  }

  private void add(String name, Field item, Node.Keyed own, Origin origin) {
    String what = kind.word() + " " + name;
    if (origin == Origin.USER) {
      touched.add(name);
    }
    Optional<Node> from = own.find(FROM);
    if (from.isPresent()) {
      String source = from.get() instanceof Node.Single single ? single.text().strip() : "";
      Node.Keyed base = entries.get(source);
      if (base == null) {
        Field field = new Field(from.get(), item.path() + "." + FROM, reading);
        reportUnknown(field, source);
        return;
      }
      boolean changes = origin == Origin.USER && source.equals(name);
      if (origin == Origin.USER && !changes) {
        note(what, name, own, "copied from " + source + " with changes");
      }
      entries.put(name, over(base, own, changes ? what : ""));
      return;
    }
    WindowScale.of(own)
        .ifPresent(
            scale ->
                new Field(scale, item.path() + "." + WindowScale.KEY, reading)
                    .report(
                        "scale-alone",
                        "a scale without \"from\"",
                        "\"scale\" beside \"from\", or in an override",
                        ""));
    if (origin == Origin.USER) {
      note(what, name, own, "an entry of " + own.place().file());
    }
    entries.put(name, own);
  }

  private void note(String what, String name, Node.Keyed own, String now) {
    String was = entries.containsKey(name) ? "the library's entry" : "nothing";
    changes.add(new LibraryChange(what, was, now, own.place().toText()));
  }

  private void reportUnknown(Field field, String name) {
    List<String> known = List.copyOf(entries.keySet());
    field.report(
        "unknown-" + kind.word(),
        "\"" + name + "\"",
        "a " + kind.word() + " of the library: " + String.join(", ", known),
        Words.maybe(name, known));
  }

  /** Own keys over a base whose cutting values are scaled first, where the own keys ask for it. */
  private Node.Keyed over(Node.Keyed base, Node.Keyed own, String what) {
    Optional<Node> scale = WindowScale.of(own);
    if (kind != LibraryKind.MATERIALS || scale.isEmpty()) {
      return merge(base, own, what);
    }
    if (!what.isEmpty()) {
      String now = WindowScale.words(scale.get());
      changes.add(
          new LibraryChange(
              what + " cutting values", "as in the library", now, scale.get().place().toText()));
    }
    Field field = new Field(scale.get(), kind.key() + "." + WindowScale.KEY, reading);
    Node.Keyed scaled = WindowScale.read(field).applied(base);
    return merge(scaled, WindowScale.without(own), what);
  }

  /** Own keys over base keys, blocks within blocks likewise; noted where {@code what} is given. */
  private Node.Keyed merge(Node.Keyed base, Node.Keyed own, String what) {
    Map<String, Node.Entry> merged = new LinkedHashMap<>();
    base.entries().forEach(entry -> merged.put(entry.key(), entry));
    own.entries().stream()
        .filter(Predicate.not(entry -> entry.key().equals(FROM)))
        .forEach(entry -> lay(merged, entry, what));
    return new Node.Keyed(List.copyOf(merged.values()), own.place());
  }

  private void lay(Map<String, Node.Entry> merged, Node.Entry own, String what) {
    Node.Entry base = merged.get(own.key());
    if (base == null && !what.isEmpty() && own.value() instanceof Node.Single single) {
      String key = what + " " + own.key();
      changes.add(new LibraryChange(key, "nothing", single.text(), own.place().toText()));
    }
    merged.put(own.key(), base == null ? own : merged(base, own, what));
  }

  private Node.Entry merged(Node.Entry base, Node.Entry own, String what) {
    String inner = what.isEmpty() ? "" : what + " " + own.key();
    if (base.value() instanceof Node.Keyed baseBlock && own.value() instanceof Node.Keyed block) {
      return new Node.Entry(own.key(), own.place(), merge(baseBlock, block, inner));
    }
    if (!inner.isEmpty() && !own.key().equals(NAME)) {
      changes.add(
          new LibraryChange(inner, plain(base.value()), plain(own.value()), own.place().toText()));
    }
    return own;
  }

  private static String plain(Node node) {
    return node instanceof Node.Single single ? single.text() : node.words();
  }

  /** The entries by name, in the order they came. */
  Map<String, Node.Keyed> entries() {
    return entries;
  }

  /** Names of the entries that the user wrote or changed. */
  Set<String> touched() {
    return touched;
  }

  /** What the user changed. */
  List<LibraryChange> changes() {
    return changes;
  }

  /** Who wrote a file. */
  enum Origin {
    /** Part of the program. */
    SHIPPED,
    /** The user's own. */
    USER
  }
}
