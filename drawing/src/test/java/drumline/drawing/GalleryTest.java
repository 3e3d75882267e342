package drumline.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.drawing.part.PartDrawing;
import drumline.drawing.part.PartSheet;
import drumline.drawing.svg.Look;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Writes all drawings of the tests to {@code target/gallery} for looking at. */
class GalleryTest {

  @Test
  void writes() throws IOException {
    Path folder = Files.createDirectories(Path.of("target", "gallery"));
    for (Map.Entry<String, String> entry : all().entrySet()) {
      Path file = folder.resolve(entry.getKey() + ".svg");
      Files.writeString(file, entry.getValue());
      assertThat(Files.size(file)).isGreaterThan(1000);
    }
  }

  public static Map<String, String> all() {
    PartSheet paper = new PartSheet(DrawingUnits.METRIC, Look.PAPER, Set.of());
    PartSheet marked = new PartSheet(DrawingUnits.INCH, Look.PAPER, Set.of("o3", "f1"));
    Map<String, String> all = new TreeMap<>();
    all.put("body", PartDrawing.svg(Pieces.stainlessBody(), Pieces.stainlessBar(), paper));
    all.put("body-inch", PartDrawing.svg(Pieces.stainlessBody(), Pieces.stainlessBar(), marked));
    all.put("nipple", PartDrawing.svg(Pieces.brassNipple(), Pieces.hexagonBar(), paper));
    all.put("sleeve", PartDrawing.svg(Pieces.sleeve(), Pieces.sleeveBar(), paper));
    all.put("knob", PartDrawing.svg(Pieces.knurledKnob(), Pieces.sleeveBar(), paper));
    all.put(
        "body-screen",
        PartDrawing.svg(Pieces.stainlessBody(), Pieces.stainlessBar(), DrawingUnits.METRIC));
    return all;
  }
}
