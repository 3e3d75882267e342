package drumline.drawing.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.drawing.DrawingUnits;
import drumline.drawing.Pieces;
import drumline.drawing.SvgReading;
import drumline.drawing.part.PartDrawing;
import drumline.drawing.part.PartSheet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** The print's drawing says what the print says, to scale. */
class PartDrawingTest {

  private static String body(DrawingUnits units) {
    return PartDrawing.svg(Pieces.stainlessBody(), Pieces.stainlessBar(), units);
  }

  private static List<String> texts(String svg) {
    return SvgReading.all(SvgReading.parse(svg), "text").stream()
        .map(Element::getTextContent)
        .toList();
  }

  @Test
  void dimensionsStandWithTheirTolerances() {
    assertThat(texts(body(DrawingUnits.METRIC)))
        .contains("Ø15 h7  Ra 0.8", "M12 × 1 – 6g, 7.5 long", "groove 1.5 × Ø10.4", "42 ±0.1")
        .contains("2 flats, 12 h11 across", "4× Ø2 H12 × 9", "Ø7 H8", "9 deep")
        .contains("chamfers 0.5 × 45° unless marked", "general tolerances ISO 2768-m")
        .contains("runout 0.02: o2 to f1");
  }

  @Test
  void inchesAreTheSameLengths() {
    assertThat(texts(body(DrawingUnits.INCH)))
        .contains("Ø0.5906 h7  Ra 0.8", "1.6535 ±0.0039", "groove 0.0591 × Ø0.4094");
    assertThat(DrawingUnits.INCH.length(25.4)).isEqualTo("1");
    assertThat(DrawingUnits.INCH.tolerance(Pieces.tolerance("+0.05/-0.02", -0.02, 0.05)))
        .isEqualTo("+0.002/−0.0008");
  }

  @Test
  void runningLengthsAreToScale() {
    Element root = SvgReading.parse(body(DrawingUnits.METRIC));
    Element lengths =
        SvgReading.all(root, "g").stream()
            .filter(g -> g.getAttribute("class").equals("lengths"))
            .findFirst()
            .orElseThrow();
    Element line = SvgReading.all(lengths, "line").get(0);
    double x0 = SvgReading.number(line, "x1");
    assertThat(SvgReading.number(line, "x2") - x0).isEqualTo(42 * 2.5, within(1e-3));
    List<Double> ticks =
        SvgReading.all(lengths, "line").stream()
            .skip(1)
            .map(t -> (SvgReading.number(t, "x1") + SvgReading.number(t, "x2")) / 2 - x0)
            .map(x -> Math.round(x / 2.5 * 1000) / 1000.0)
            .toList();
    assertThat(ticks).containsExactly(8.5, 10.0, 13.0, 18.0, 24.0, 29.0, 30.0, 33.0, 36.0, 42.0);
  }

  @Test
  void cutMaterialIsHatchedAndLinesHaveTheirWidths() {
    String svg = body(DrawingUnits.METRIC);
    assertThat(svg).contains("-section\" class=\"hatch section\"", "rotate(45)");
    assertThat(svg).contains(".wide{fill:none;stroke:var(--dl-ink);stroke-width:.5;");
    assertThat(svg).contains(".thin{fill:none;stroke:var(--dl-ink);stroke-width:.25;");
    assertThat(svg).contains("class=\"long-dash-dot\"");
  }

  @Test
  void namesAreEscaped() {
    String svg = PartDrawing.svg(Pieces.brassNipple(), Pieces.hexagonBar(), DrawingUnits.METRIC);
    assertThat(svg).contains("Hose nipple &lt;G 3/8 &amp; Ø13&gt;").doesNotContain("<G 3/8");
  }

  @Test
  void markedElementsStandOut() {
    PartSheet sheet = PartSheet.screen(DrawingUnits.METRIC).withMarked(Set.of("o3"));
    String svg = PartDrawing.svg(Pieces.stainlessBody(), Pieces.stainlessBar(), sheet);
    assertThat(svg).contains("class=\"element marked\" data-element=\"o3\"");
    assertThat(svg).doesNotContain("class=\"element marked\" data-element=\"o2\"");
  }
}
