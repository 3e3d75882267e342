package drumline.intake.edit.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumline.intake.edit.PlainTree;
import drumline.intake.edit.RefusedEditException;
import drumline.intake.edit.TextEdit;
import drumline.intake.edit.TextEdits;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Edits change what was asked and nothing else, to the letter. */
class TextEditsTest {
  private static final String TEXT =
      """
      # our print
      units: metric   # as drawn

      part:
        length: 38 mm ±0.1   # over all
        outside:
          # the spigot
          - {id: spigot, to: 7 mm, diameter: 18 mm h8}   # ground
          - {id: neck, to: 19 mm, diameter: 20 mm}

          # last
          - id: tail
            to: 38 mm
            diameter: 18 mm
      wishes:
        machines: [drum-8x26]
      """;

  private static String edited(TextEdit... edits) throws RefusedEditException {
    return TextEdits.apply(TEXT, List.of(edits));
  }

  private static String changed(String was, String now) {
    assertThat(TEXT).contains(was);
    return TEXT.replace(was, now);
  }

  private static List<Object> path(Object... steps) {
    return List.of(steps);
  }

  @Test
  void aValueIsReplacedWithinItsLine() throws RefusedEditException {
    assertThat(edited(new TextEdit.Put(path("part", "length"), "40 mm h11")))
        .isEqualTo(changed("38 mm ±0.1", "40 mm h11"));
    assertThat(edited(new TextEdit.Put(path("part", "outside", 0, "diameter"), "18.2 mm h8")))
        .isEqualTo(changed("diameter: 18 mm h8", "diameter: 18.2 mm h8"));
    assertThat(edited(new TextEdit.Put(path("part", "outside", 2, "to"), "39 mm")))
        .isEqualTo(changed("to: 38 mm\n", "to: 39 mm\n"));
  }

  @Test
  void aNewKeyComesLastInItsBlock() throws RefusedEditException {
    assertThat(edited(new TextEdit.Put(path("part", "outside", 1, "edge"), "1 mm x 45°")))
        .isEqualTo(changed("diameter: 20 mm}", "diameter: 20 mm, edge: 1 mm x 45°}"));
    assertThat(edited(new TextEdit.Put(path("part", "outside", 2, "edge"), "break")))
        .isEqualTo(changed("diameter: 18 mm\n", "diameter: 18 mm\n      edge: break\n"));
  }

  @Test
  void aListOfBlocksIsMadeWhereNoneWas() throws RefusedEditException {
    TextEdit pin =
        new TextEdit.Put(path("wishes", "pins"), List.of(Map.of("operation", "cut-off")));
    assertThat(edited(pin))
        .isEqualTo(
            changed(
                "machines: [drum-8x26]\n",
                "machines: [drum-8x26]\n  pins:\n    - {operation: cut-off}\n"));
    TextEdit again = new TextEdit.Put(path("wishes", "pins"), List.of());
    assertThat(edited(pin, again))
        .isEqualTo(changed("machines: [drum-8x26]\n", "machines: [drum-8x26]\n  pins: []\n"));
    assertThat(edited(pin, again, pin)).isEqualTo(edited(pin));
  }

  @Test
  void elementsKeepTheirComments() throws RefusedEditException {
    String moved = edited(new TextEdit.Move(path("part", "outside", 0), 1));
    assertThat(moved)
        .contains(
            "    - {id: neck, to: 19 mm, diameter: 20 mm}\n    # the spigot\n    - {id: spigot")
        .contains("# ground\n\n    # last\n    - id: tail");
    assertThat(edited(new TextEdit.Remove(path("part", "outside", 0))))
        .isEqualTo(
            changed(
                "    # the spigot\n    - {id: spigot, to: 7 mm, diameter: 18 mm h8}   # ground\n",
                ""));
    TextEdit add =
        new TextEdit.Add(path("part", "outside"), OptionalInt.of(1), Map.of("id", "collar"));
    assertThat(edited(add))
        .isEqualTo(changed("    - {id: neck", "    - {id: collar}\n    - {id: neck"));
  }

  @Test
  void missingBlocksAreMade() throws RefusedEditException {
    TextEdit add =
        new TextEdit.Add(
            path("part", "features"), OptionalInt.empty(), Map.of("id", "mark", "kind", "x"));
    Map<String, Object> tree = PlainTree.of(edited(add, add)).orElseThrow();
    assertThat(((Map<?, ?>) tree.get("part")).get("features"))
        .asInstanceOf(org.assertj.core.api.InstanceOfAssertFactories.LIST)
        .hasSize(2);
    assertThat(edited(new TextEdit.Put(path("today", "how"), "bought: see mail")))
        .isEqualTo(TEXT + "today: {how: \"bought: see mail\"}\n");
  }

  @Test
  void whatCannotBeDoneIsRefusedWithItsPlace() {
    assertThatThrownBy(() -> edited(new TextEdit.Remove(path("part", "outside", 7))))
        .isInstanceOf(RefusedEditException.class)
        .hasMessageContaining("no element 7, allowed: 0 to 2");
    assertThatThrownBy(() -> TextEdits.apply("a: [", List.of(new TextEdit.Remove(path("a")))))
        .hasMessageContaining("mend it as text first");
    assertThatThrownBy(() -> edited(new TextEdit.Put(path("units", "x"), "y")))
        .hasMessageContaining("no block of keys");
  }
}
