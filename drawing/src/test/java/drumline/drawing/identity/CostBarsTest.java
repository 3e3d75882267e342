package drumline.drawing.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumline.drawing.Gallery;
import drumline.drawing.SvgReading;
import drumline.drawing.cost.CostBars;
import drumline.drawing.cost.Share;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** Widths are amounts. */
class CostBarsTest {

  @Test
  void everyShareIsAsWideAsItsAmount() {
    List<Share> shares = Gallery.shares();
    Element root = SvgReading.parse(CostBars.svg(shares, "EUR", new BigDecimal("0.71")));
    List<Element> groups =
        SvgReading.all(root, "g").stream().filter(g -> g.hasAttribute("data-share")).toList();
    assertThat(groups).hasSameSizeAs(shares);
    double pxPerEuro = (760 - 92 - 96) / 0.71;
    for (int i = 0; i < shares.size(); i++) {
      Element rect = SvgReading.all(groups.get(i), "rect").get(0);
      assertThat(SvgReading.number(rect, "width"))
          .isEqualTo(Math.abs(shares.get(i).amount().doubleValue()) * pxPerEuro, within(1e-3));
    }
  }

  @Test
  void tableAddsUpAndComparesWithToday() {
    String svg = CostBars.svg(Gallery.shares(), "EUR", new BigDecimal("0.71"));
    List<String> texts =
        SvgReading.all(SvgReading.parse(svg), "text").stream()
            .map(Element::getTextContent)
            .toList();
    assertThat(texts).contains("0.3950 EUR", "0.7100 EUR", "−0.0312", "100.0 %");
    assertThat(texts).contains("this study is 0.3150 EUR (44.4 %) less", "energy & oil <mist>");
  }

  @Test
  void nothingPaidIsRefused() {
    assertThatThrownBy(() -> CostBars.svg(List.of(), "EUR", null))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("shares: sum of costs 0, allowed: above 0");
  }
}
