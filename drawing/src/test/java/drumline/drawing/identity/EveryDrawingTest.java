package drumline.drawing.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.drawing.Gallery;
import drumline.drawing.SvgReading;
import drumline.drawing.SvgReading.TextBox;
import drumline.drawing.svg.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** What holds for every drawing: it stands alone, is well-formed, and nothing overlaps. */
class EveryDrawingTest {

  private static final Map<String, String> ALL = Gallery.all();

  static Stream<Arguments> drawings() {
    return ALL.entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void standsAlone(String name, String svg) {
    Element root = SvgReading.parse(svg);
    assertThat(root.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
    String[] view = root.getAttribute("viewBox").split(" ", -1);
    assertThat(Double.parseDouble(view[2])).isEqualTo(SvgReading.number(root, "width"));
    assertThat(Double.parseDouble(view[3])).isEqualTo(SvgReading.number(root, "height"));
    assertThat(SvgReading.all(root, "title").get(0).getTextContent()).isNotBlank();
    assertThat(SvgReading.all(root, "desc").get(0).getTextContent()).isNotBlank();
    assertThat(SvgReading.all(root, "style")).hasSize(1);
    assertThat(svg).doesNotContain("NaN", "Infinity", "\uE000");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void everyIdIsUniqueAndEveryPatternIsThere(String name, String svg) {
    Element root = SvgReading.parse(svg);
    List<String> ids = new ArrayList<>();
    for (Element element : SvgReading.all(root, "*")) {
      if (element.hasAttribute("id")) {
        ids.add(element.getAttribute("id"));
      }
    }
    assertThat(ids).doesNotHaveDuplicates();
    for (Element element : SvgReading.all(root, "*")) {
      String fill = element.getAttribute("fill");
      if (fill.startsWith("url(#")) {
        assertThat(ids).contains(fill.substring(5, fill.length() - 1));
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void noTextOverlapsAnother(String name, String svg) {
    List<TextBox> texts = SvgReading.texts(SvgReading.parse(svg));
    assertThat(texts).isNotEmpty();
    for (int i = 0; i < texts.size(); i++) {
      for (int j = i + 1; j < texts.size(); j++) {
        assertThat(texts.get(i).box().overlaps(texts.get(j).box()))
            .as("%s and %s", texts.get(i), texts.get(j))
            .isFalse();
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void everyTextIsOnTheSheet(String name, String svg) {
    Element root = SvgReading.parse(svg);
    Box sheet = new Box(0, 0, SvgReading.number(root, "width"), SvgReading.number(root, "height"));
    for (TextBox text : SvgReading.texts(root)) {
      assertThat(sheet.contains(text.box())).as("%s on %s", text, sheet).isTrue();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawings")
  void coloursFollowTheReaderOnScreenAndArePlainOnPaper(String name, String svg) {
    if (name.endsWith("screen")) {
      assertThat(svg).contains("@media (prefers-color-scheme:dark)", "@media print");
      assertThat(svg).contains("--dl-accent:", "var(--dl-ink)");
    } else {
      assertThat(svg).doesNotContain("var(", "prefers-color-scheme");
    }
  }
}
