package drumline.drawing.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.drawing.DrawingUnits;
import drumline.drawing.RandomPrints;
import drumline.drawing.SvgReading;
import drumline.drawing.SvgReading.TextBox;
import drumline.drawing.part.PartDrawing;
import drumline.drawing.svg.Box;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** However crowded a print is, its texts stand clear of each other and on the sheet. */
class RandomPrintsTest {

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 40);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void textsStandClear(long seed) {
    RandomPrints prints = new RandomPrints(seed);
    DrawingUnits units = seed % 2 == 0 ? DrawingUnits.METRIC : DrawingUnits.INCH;
    Element root = SvgReading.parse(PartDrawing.svg(prints.part(), prints.bar(), units));
    Box sheet = new Box(0, 0, SvgReading.number(root, "width"), SvgReading.number(root, "height"));
    List<TextBox> texts = SvgReading.texts(root);
    for (int i = 0; i < texts.size(); i++) {
      assertThat(sheet.contains(texts.get(i).box())).as("%s", texts.get(i)).isTrue();
      for (int j = i + 1; j < texts.size(); j++) {
        assertThat(texts.get(i).box().overlaps(texts.get(j).box()))
            .as("%s and %s", texts.get(i), texts.get(j))
            .isFalse();
      }
    }
  }
}
