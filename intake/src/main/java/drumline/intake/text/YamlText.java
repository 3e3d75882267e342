package drumline.intake.text;

import drumline.shop.problem.Problem;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads a YAML 1.2 text into {@link Node}s. Every value stays text until a field asks for a kind.
 */
public final class YamlText {

  /** Deepest nesting that a file may have. */
  private static final int DEEPEST_COUNT = 40;

  private YamlText() {}

  /**
   * Reads a text; what is wrong with it is added to the problems.
   *
   * @param text the text
   * @param file name of the file for messages
   * @param problems where to add
   * @return the top block of keys, or empty where nothing can be read
   */
  public static Optional<Node.Keyed> read(String text, String file, List<Problem> problems) {
    LoadSettings settings =
        LoadSettings.builder()
            .setLabel(file)
            .setUseMarks(true)
            .setMaxAliasesForCollections(Integer.MAX_VALUE)
            .build();
    try {
      Optional<Problem> tooDeep = findTooDeep(text, file, settings);
      if (tooDeep.isPresent()) {
        problems.add(tooDeep.get());
        return Optional.empty();
      }
      Optional<Node> top =
          new Compose(settings)
              .composeString(text)
              .flatMap(node -> new NodeTree(file, problems).convert(node));
      return top.flatMap(node -> keyed(node, problems)).or(() -> empty(text, file, problems));
    } catch (YamlEngineException e) {
      problems.add(YamlFault.problem(e, text, file));
      return Optional.empty();
    }
  }

  private static Optional<Node.Keyed> keyed(Node node, List<Problem> problems) {
    if (node instanceof Node.Keyed keyed) {
      return Optional.of(keyed);
    }
    if (!node.words().equals("nothing")) {
      problems.add(
          Problem.error(
              "not-a-block",
              node.place().toText(),
              node.words(),
              "keys with values, such as \"units: metric\"",
              ""));
    }
    return Optional.empty();
  }

  private static Optional<Node.Keyed> empty(String text, String file, List<Problem> problems) {
    if (problems.isEmpty()) {
      String found = text.isBlank() ? "an empty file" : "a file without keys";
      problems.add(
          Problem.error(
              "file-empty", file, found, "keys with values, such as \"units: metric\"", ""));
    }
    return Optional.empty();
  }

  private static Optional<Problem> findTooDeep(String text, String file, LoadSettings settings) {
    int depth = 0;
    for (Event event : new Parse(settings).parseString(text)) {
      switch (event.getEventId()) {
        case MappingStart, SequenceStart -> depth++;
        case MappingEnd, SequenceEnd -> depth--;
        default -> {}
      }
      if (depth > DEEPEST_COUNT) {
        String where = event.getStartMark().map(mark -> place(file, mark).toText()).orElse(file);
        return Optional.of(
            Problem.error(
                "nested-too-deep",
                where,
                "more than " + DEEPEST_COUNT + " levels, one inside the other",
                "at most " + DEEPEST_COUNT + " levels",
                ""));
      }
    }
    return Optional.empty();
  }

  static Place place(String file, Mark mark) {
    return new Place(file, mark.getLine() + 1, mark.getColumn() + 1);
  }
}
