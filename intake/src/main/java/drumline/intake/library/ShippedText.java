package drumline.intake.library;

import drumline.intake.text.Node;
import drumline.intake.text.YamlText;
import drumline.shop.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The library files that ship with the program, parsed once. */
final class ShippedText {

  private static final Map<LibraryKind, Node.Keyed> TREES = parseAll();

  private ShippedText() {}

  /** The keys at the top of a shipped file. */
  static Node.Keyed tree(LibraryKind kind) {
    return Objects.requireNonNull(TREES.get(kind));
  }

  /** Name of a shipped file for messages. */
  static String label(LibraryKind kind) {
    return "library/" + kind.key() + ".yaml";
  }

  private static Map<LibraryKind, Node.Keyed> parseAll() {
    Map<LibraryKind, Node.Keyed> trees = new EnumMap<>(LibraryKind.class);
    for (LibraryKind kind : LibraryKind.values()) {
      trees.put(kind, parse(kind));
    }
    return trees;
  }

  private static Node.Keyed parse(LibraryKind kind) {
    String name = kind.key() + ".yaml";
    try (InputStream stream = ShippedText.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("library file " + name + " is missing");
      }
      List<Problem> problems = new ArrayList<>();
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      return YamlText.read(text, label(kind), problems)
          .orElseThrow(() -> new IllegalStateException("library file " + name + ": " + problems));
    } catch (IOException e) {
      throw new UncheckedIOException("library file " + name + " cannot be read", e);
    }
  }
}
