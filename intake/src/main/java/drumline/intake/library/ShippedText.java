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

  private static final Map<LibraryKind, List<Tree>> TREES = parseAll();

  private ShippedText() {}

  /**
   * A shipped file.
   *
   * @param label its name for messages
   * @param top the keys at its top
   */
  record Tree(String label, Node.Keyed top) {}

  /** The shipped files of a kind, in the order they are read. */
  static List<Tree> trees(LibraryKind kind) {
    return Objects.requireNonNull(TREES.get(kind));
  }

  private static Map<LibraryKind, List<Tree>> parseAll() {
    Map<LibraryKind, List<Tree>> trees = new EnumMap<>(LibraryKind.class);
    for (LibraryKind kind : LibraryKind.values()) {
      trees.put(kind, kind.files().stream().map(ShippedText::parse).toList());
    }
    return trees;
  }

  private static Tree parse(String name) {
    String label = "library/" + name;
    try (InputStream stream = ShippedText.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException("library file " + name + " is missing");
      }
      List<Problem> problems = new ArrayList<>();
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      return YamlText.read(text, label, problems)
          .map(top -> new Tree(label, top))
          .orElseThrow(() -> new IllegalStateException("library file " + name + ": " + problems));
    } catch (IOException e) {
      throw new UncheckedIOException("library file " + name + " cannot be read", e);
    }
  }
}
