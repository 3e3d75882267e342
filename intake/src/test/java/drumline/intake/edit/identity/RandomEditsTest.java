package drumline.intake.edit.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.intake.edit.PlainTree;
import drumline.intake.edit.TextEdit;
import drumline.intake.edit.TextEdits;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Any edit of a shipped example can be done, and every comment that it does not remove stays. */
class RandomEditsTest {
  private static final List<Object> VALUES =
      List.of(
          "12 mm h9",
          "a: b # c",
          "",
          "null",
          "±0.05",
          "- x",
          "two\nlines",
          "\"quoted\" \\ 'single'",
          "[1, 2]",
          List.of("a", "b, c"),
          Map.of("id", "x y", "to", "7 mm"),
          List.of(Map.of("operation", "o-1", "position", "3")));

  static Stream<Path> examples() throws java.io.IOException {
    Path folder = Path.of("..", "examples");
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void editsDoWhatTheySay(Path example) throws Exception {
    String original = Files.readString(example);
    for (int seed = 0; seed < 25; seed++) {
      Random random = new Random(seed);
      String text = original;
      for (int step = 0; step < 8; step++) {
        TextEdit edit = edit(PlainTree.of(text).orElseThrow(), random);
        String before = text;
        try {
          text = TextEdits.apply(text, List.of(edit));
        } catch (Exception e) {
          throw new AssertionError(
              "seed " + seed + " step " + step + ": " + edit + "\n" + before, e);
        }
        if (edit instanceof TextEdit.Add || edit instanceof TextEdit.Move) {
          assertThat(comments(text)).as("seed " + seed).isEqualTo(comments(before));
        }
      }
    }
  }

  private static List<String> comments(String text) {
    return text.lines()
        .filter(l -> l.strip().startsWith("# "))
        .map(String::strip)
        .sorted()
        .toList();
  }

  /** Walks down at random and edits where it stops. */
  private static TextEdit edit(Map<String, Object> tree, Random random) {
    List<Object> path = new ArrayList<>();
    Object here = tree;
    while (true) {
      boolean stops = !path.isEmpty() && random.nextInt(3) == 0;
      if (here instanceof Map<?, ?> map && !map.isEmpty() && !stops) {
        List<?> keys = List.copyOf(map.keySet());
        Object key = keys.get(random.nextInt(keys.size()));
        path.add(key);
        here = map.get(key);
      } else if (here instanceof List<?> list && !list.isEmpty() && !stops) {
        int i = random.nextInt(list.size());
        path.add(i);
        here = list.get(i);
      } else {
        return edit(path, here, random);
      }
    }
  }

  private static TextEdit edit(List<Object> path, Object here, Random random) {
    Object value = VALUES.get(random.nextInt(VALUES.size()));
    if (here instanceof List<?> list) {
      int at = random.nextInt(list.size() + 1);
      return new TextEdit.Add(path, OptionalInt.of(at), value);
    }
    if (here instanceof Map<?, ?> && random.nextBoolean()) {
      path.add("new-key-" + random.nextInt(3));
      return new TextEdit.Put(path, value);
    }
    if (path.size() > 2 && path.get(path.size() - 1) instanceof Integer && random.nextBoolean()) {
      return new TextEdit.Move(path, 0);
    }
    return random.nextInt(3) == 0 ? new TextEdit.Remove(path) : new TextEdit.Put(path, value);
  }
}
