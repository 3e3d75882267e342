package drumline.sheets.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumline.sheets.content.Cautions;
import drumline.sheets.content.plain.Picture;
import drumline.sheets.content.process.SafetyFigure;
import drumline.sheets.html.StudyHtml;
import drumline.sheets.sample.SampleStudy;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class StudyPageTest {
  private final String page = StudyHtml.render(SampleStudy.study());
  private final Document document = parsed(page);

  /** The page lies in target/sample-study.html for whoever wants to look at it. */
  @Test
  void isOneFileThatFetchesAndRunsNothing() throws IOException {
    Files.writeString(Path.of("target/sample-study.html"), page);
    assertThat(page).startsWith("<!DOCTYPE html>\n<html lang=\"en\">");
    assertThat(document.getElementsByTagName("script").getLength()).isZero();
    assertThat(document.getElementsByTagName("link").getLength()).isZero();
    assertThat(document.getElementsByTagName("img").getLength()).isZero();
    assertThat(page).doesNotContain("@import").doesNotContain("url(http").doesNotContain("href");
  }

  @Test
  void everyTableHasItsCaptionHeadsAndRowNames() {
    for (Element table : elements("table")) {
      assertThat(table.getElementsByTagName("caption").getLength()).isOne();
      NodeList heads = table.getElementsByTagName("th");
      for (int i = 0; i < heads.getLength(); i++) {
        assertThat(((Element) heads.item(i)).getAttribute("scope")).isIn("col", "row", "rowgroup");
      }
      int columns =
          ((Element) table.getElementsByTagName("tr").item(0)).getChildNodes().getLength();
      NodeList rows = table.getElementsByTagName("tr");
      for (int i = 0; i < rows.getLength(); i++) {
        int cells = rows.item(i).getChildNodes().getLength();
        assertThat(cells).isIn(1, columns);
      }
    }
    assertThat(elements("table")).hasSizeGreaterThan(9);
  }

  @Test
  void headingsStepDownOneAtATime() {
    List<Integer> levels = new ArrayList<>();
    for (Element element : elements("*")) {
      if (element.getTagName().matches("h[1-6]")) {
        levels.add(element.getTagName().charAt(1) - '0');
      }
    }
    assertThat(levels.get(0)).isOne();
    assertThat(levels).filteredOn(level -> level == 1).hasSize(1);
    for (int i = 1; i < levels.size(); i++) {
      assertThat(levels.get(i)).isLessThanOrEqualTo(levels.get(i - 1) + 1);
    }
  }

  @Test
  void cautionsStandInFrontAtTheEndAndBesideTheirFigures() {
    String text = document.getDocumentElement().getTextContent();
    assertThat(text.split(java.util.regex.Pattern.quote(Cautions.GENERAL), -1)).hasSize(3);
    for (SafetyFigure figure : SampleStudy.study().safety()) {
      Element row =
          elements("tr").stream()
              .filter(line -> line.getTextContent().contains(figure.label()))
              .findFirst()
              .orElseThrow();
      assertThat(row.getTextContent()).contains(figure.figure(), figure.kind().caution());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "\"quoted\" & 'single' <b>",
        "</style><script>x</script>",
        "\\\"; } body { display:none",
        "Ünïcode Ø 4 ≥ 3 µm"
      })
  void whateverATitleHoldsIsShownAsItIs(String title) {
    Document odd = parsed(StudyHtml.render(SampleStudy.titled(title, title)));
    assertThat(odd.getElementsByTagName("h1").item(0).getTextContent()).isEqualTo(title);
    assertThat(odd.getElementsByTagName("script").getLength()).isZero();
    assertThat(odd.getElementsByTagName("style").item(0).getTextContent())
        .doesNotContain(title)
        .contains("@page");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<p/>",
        "<svg><script>1</script></svg>",
        "<svg onload=\"x()\"></svg>",
        "<svg><image href=\"http://example.org/a.png\"/></svg>",
        "<svg><style>a{fill:url(http://example.org)}</style></svg>"
      })
  void refusesPicturesThatRunOrFetch(String svg) {
    assertThatThrownBy(() -> new Picture("t", "c", Picture.Room.COLUMN, svg))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("svg: ");
  }

  private List<Element> elements(String name) {
    List<Element> found = new ArrayList<>();
    NodeList nodes = document.getElementsByTagName(name);
    for (int i = 0; i < nodes.getLength(); i++) {
      found.add((Element) nodes.item(i));
    }
    return found;
  }

  private static Document parsed(String html) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(html)));
    } catch (Exception e) {
      throw new AssertionError("the page is not well-formed", e);
    }
  }
}
