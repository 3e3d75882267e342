package drumline.drawing.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drumline.cycle.timeline.OperationSpan;
import drumline.cycle.timeline.TimeElement;
import drumline.cycle.timeline.Timeline;
import drumline.drawing.Pieces;
import drumline.drawing.SvgReading;
import drumline.drawing.Walls;
import drumline.drawing.Walls.Stay;
import drumline.drawing.Works;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.Look;
import drumline.drawing.wall.CycleWall;
import drumline.drawing.wall.WallView;
import drumline.shape.workpiece.PositionState;
import drumline.shop.machine.Machine;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

/** Blocks stand where their times say, and texts inside their blocks, for any work. */
class CycleWallTest {

  @Retention(RetentionPolicy.RUNTIME)
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  private @interface Seeds {}

  private static final Machine EIGHT = Walls.machine(8, 3);

  private static List<Stay> stays(long seed) {
    return Works.random(seed, 8, 3, 10 + (int) seed * 4, seed % 2 == 0 ? "" : " & a long <tail>");
  }

  private static Element wall(Timeline timeline, List<Stay> stays) {
    return SvgReading.parse(
        CycleWall.svg(timeline, Walls.route(stays), EIGHT, List.of(), WallView.paper()));
  }

  private static List<Element> blocks(Element root) {
    return SvgReading.all(root, "g").stream()
        .filter(g -> g.hasAttribute("data-operation"))
        .toList();
  }

  private static Element frame(Element root) {
    return SvgReading.all(root, "g").stream()
        .filter(g -> g.hasAttribute("data-px-per-s"))
        .findFirst()
        .orElseThrow();
  }

  @Seeds
  void blocksStandAtTimeTimesScale(long seed) {
    List<Stay> stays = stays(seed);
    Timeline timeline = Walls.timeline(EIGHT, stays, 0.6);
    Element root = wall(timeline, stays);
    double pxPerS = SvgReading.number(frame(root), "data-px-per-s");
    double topPx = SvgReading.number(frame(root), "data-top");
    assertThat(blocks(root)).hasSize(stays.size());
    for (Element block : blocks(root)) {
      OperationSpan span =
          timeline.findOperation(block.getAttribute("data-operation")).orElseThrow();
      List<Element> rects =
          SvgReading.all(block, "rect").stream()
              .filter(rect -> !rect.getAttribute("class").equals("kind"))
              .toList();
      assertThat(rects).hasSameSizeAs(span.elements());
      for (int i = 0; i < rects.size(); i++) {
        TimeElement element = span.elements().get(i);
        Box box = SvgReading.box(rects.get(i));
        assertThat(box.y()).isEqualTo(topPx + element.startS() * pxPerS, within(1e-3));
        assertThat(box.height()).isEqualTo(element.lengthS() * pxPerS, within(1e-3));
      }
    }
  }

  @Seeds
  void blocksLieOnTheWallAndDoNotOverlap(long seed) {
    List<Stay> stays = stays(seed);
    Element root = wall(Walls.timeline(EIGHT, stays, 0.6), stays);
    double topPx = SvgReading.number(frame(root), "data-top");
    Box wall = new Box(52, topPx, 1240 - 52 - 14, WallView.paper().timePx());
    List<Box> boxes =
        blocks(root).stream()
            .flatMap(block -> SvgReading.all(block, "rect").stream())
            .filter(rect -> !rect.getAttribute("class").equals("kind"))
            .map(SvgReading::box)
            .toList();
    for (int i = 0; i < boxes.size(); i++) {
      assertThat(wall.inset(-0.001).contains(boxes.get(i))).as("%s", boxes.get(i)).isTrue();
      for (int j = i + 1; j < boxes.size(); j++) {
        assertThat(boxes.get(i).inset(0.01).overlaps(boxes.get(j).inset(0.01))).isFalse();
      }
    }
  }

  @Seeds
  void titlesStayInsideTheirBlocks(long seed) {
    List<Stay> stays = stays(seed);
    Element root = wall(Walls.timeline(EIGHT, stays, 0.6), stays);
    int titles = 0;
    for (Element block : blocks(root)) {
      Box cut =
          SvgReading.all(block, "rect").stream()
              .filter(rect -> rect.getAttribute("class").equals("cut"))
              .map(SvgReading::box)
              .findFirst()
              .orElseThrow();
      for (Element text : SvgReading.all(block, "text")) {
        if (text.hasAttribute("textLength")) {
          assertThat(cut.contains(SvgReading.textBox(text).box()))
              .as(text.getTextContent())
              .isTrue();
          titles++;
        }
      }
    }
    assertThat(titles).isPositive();
  }

  @Seeds
  void everyTitleIsInABlockOrInTheList(long seed) {
    List<Stay> stays = stays(seed);
    Element root = wall(Walls.timeline(EIGHT, stays, 0.6), stays);
    long numbered =
        blocks(root).stream()
            .flatMap(block -> SvgReading.all(block, "text").stream())
            .filter(text -> !text.hasAttribute("textLength"))
            .count();
    long listed =
        SvgReading.all(root, "g").stream()
            .filter(g -> g.getAttribute("class").equals("numbered"))
            .flatMap(g -> SvgReading.all(g, "text").stream())
            .count();
    assertThat(listed).isEqualTo(3 * numbered);
  }

  @Seeds
  void onlyTheGoverningColumnIsMarked(long seed) {
    List<Stay> stays = stays(seed);
    Timeline timeline = Walls.timeline(EIGHT, stays, 0.6);
    Element root = wall(timeline, stays);
    List<Element> columns =
        SvgReading.all(root, "g").stream()
            .filter(g -> g.getAttribute("class").startsWith("column"))
            .toList();
    assertThat(columns).hasSize(9);
    for (int i = 0; i < columns.size(); i++) {
      boolean governs = timeline.governing() == i + 1;
      assertThat(columns.get(i).getAttribute("class").contains("governs")).isEqualTo(governs);
    }
    double lineY =
        SvgReading.number(frame(root), "data-top")
            + timeline.workS() * SvgReading.number(frame(root), "data-px-per-s");
    Element line =
        SvgReading.all(root, "line").stream()
            .filter(l -> l.getAttribute("class").equals("cycle-line"))
            .findFirst()
            .orElseThrow();
    assertThat(SvgReading.number(line, "y1")).isEqualTo(lineY, within(1e-3));
  }

  @Test
  void headsShowWhatWasRemovedAndMayBeMissing() {
    Machine six = Walls.machine(6, 2);
    List<Stay> body = Works.valveBody();
    List<PositionState> heads =
        Walls.states(six, body, Pieces.stainlessBar(), Pieces.stainlessBody()).positions();
    Timeline timeline = Walls.timeline(six, body, 0.8);
    for (int count : new int[] {0, 3, 7}) {
      Element root =
          SvgReading.parse(
              CycleWall.svg(timeline, Walls.route(body), six, heads.subList(0, count)));
      List<Element> pictures =
          SvgReading.all(root, "g").stream()
              .filter(g -> g.getAttribute("class").equals("picture"))
              .toList();
      assertThat(pictures).hasSize(count);
      for (Element picture : pictures) {
        assertThat(SvgReading.all(picture, "path"))
            .anyMatch(path -> path.getAttribute("fill").endsWith("-removed)"))
            .anyMatch(path -> path.getAttribute("fill").endsWith("-fine-section)"));
      }
    }
  }

  @Test
  void titlesAreEscapedAndWrongOnesMarked() {
    List<Stay> stays = stays(3);
    String wrong = stays.get(0).operation().id();
    WallView view = new WallView(Look.SCREEN, 1000, 400, Set.of(wrong));
    String svg =
        CycleWall.svg(
            Walls.timeline(EIGHT, stays, 0.6), Walls.route(stays), EIGHT, List.of(), view);
    assertThat(svg).contains("&lt;tail&gt;", "&amp; a long").doesNotContain("<tail>");
    assertThat(svg).contains("class=\"op wrong\" data-operation=\"" + wrong + "\"");
  }

  @Test
  void sizesAreChecked() {
    assertThatThrownBy(() -> new WallView(Look.PAPER, 600, 400, Set.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("widthPx: 600.0, allowed: at least 640");
    assertThatThrownBy(() -> new WallView(Look.PAPER, 700, Double.NaN, Set.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("timePx: NaN, allowed: at least 200");
  }
}
