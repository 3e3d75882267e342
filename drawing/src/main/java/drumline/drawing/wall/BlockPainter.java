package drumline.drawing.wall;

import drumline.cycle.timeline.TimeElement;
import drumline.cycle.timeline.TimeElement.Kind;
import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.HatchKind;
import drumline.drawing.svg.SvgPen;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Draws the operations' blocks: open and dotted while the tool moves, toned with the kind's pattern
 * at the left while it cuts, solid while it dwells.
 */
final class BlockPainter {

  private static final double NUMBER_SIZE = 9;

  private final TimeScale time;
  private final Set<String> wrong;
  private final List<WallBlock> numbered = new ArrayList<>();

  BlockPainter(TimeScale time, Set<String> wrong) {
    this.time = time;
    this.wrong = wrong;
  }

  /** Blocks whose title found no room, in the order of their numbers. */
  List<WallBlock> numbered() {
    return numbered;
  }

  void draw(SvgPen pen, WallBlock block) {
    String id = block.span().operationId();
    pen.open(
        wrong.contains(id) ? "op wrong" : "op",
        "data-operation",
        id,
        "data-slide",
        block.span().slideId(),
        "tabindex",
        "0");
    pen.title(tip(block));
    double stripe = Math.max(4, Math.min(11, block.box().width() * 0.2));
    for (TimeElement element : block.span().elements()) {
      Box part = block.part(element, time);
      switch (element.kind()) {
        case APPROACH, RETRACT -> move(pen, part);
        case CUT -> cut(pen, part, block, stripe);
        case DWELL -> pen.rect("dwell", part);
      }
    }
    if (block.span().elements().isEmpty()) {
      cut(pen, block.box(), block, stripe);
    }
    label(pen, block, stripe);
    pen.close();
  }

  private static void move(SvgPen pen, Box part) {
    pen.rect("move", part, "fill", SvgPen.fill(HatchKind.SPARSE));
  }

  private static void cut(SvgPen pen, Box part, WallBlock block, double stripe) {
    pen.rect("cut", part);
    Optional<KindPattern> kind = block.operation().map(o -> KindPattern.of(o.kind()));
    if (kind.isPresent()) {
      Box side = new Box(part.x(), part.y(), stripe, part.height());
      pen.rect("kind", side, "fill", SvgPen.fill(kind.get().hatch()));
    }
  }

  private void label(SvgPen pen, WallBlock block, double stripe) {
    Box cut = block.cutBox(time);
    Box room =
        new Box(
            cut.x() + stripe + 2,
            cut.y() + 1.5,
            Math.max(0, cut.width() - stripe - 4),
            Math.max(0, cut.height() - 3));
    Optional<BlockLabel> label = BlockLabel.find(block.title(), room);
    if (label.isPresent()) {
      label.get().draw(pen);
    } else {
      numbered.add(block);
      number(pen, block, room, String.valueOf(numbered.size()));
    }
  }

  /** The number inside the cut, or beside the block in its lane where the cut is too short. */
  private static void number(SvgPen pen, WallBlock block, Box room, String words) {
    double x = room.x() + room.width() / 2;
    double least = NUMBER_SIZE + 2;
    if (room.height() >= NUMBER_SIZE * 0.8) {
      double y = room.y() + room.height() / 2 + NUMBER_SIZE * 0.36;
      pen.text("bold", x, y, NUMBER_SIZE, Anchor.MIDDLE, words);
    } else if (block.roomBelowPx() >= least) {
      pen.text("bold", x, block.box().bottom() + NUMBER_SIZE, NUMBER_SIZE, Anchor.MIDDLE, words);
    } else if (block.roomAbovePx() >= least) {
      pen.text("bold", x, block.box().y() - 2, NUMBER_SIZE, Anchor.MIDDLE, words);
    } else {
      double size = Math.max(5, Math.min(NUMBER_SIZE, block.box().height() * 0.9));
      double y = block.box().y() + block.box().height() / 2 + size * 0.36;
      pen.text("bold", x, y, size, Anchor.MIDDLE, words);
    }
  }

  private static String tip(WallBlock block) {
    return block.title()
        + ": "
        + block.column().words()
        + ", "
        + Seconds.words(block.span().startS())
        + " to "
        + Seconds.words(block.span().endS())
        + ", moving "
        + Seconds.words(block.movingS())
        + ", cutting "
        + Seconds.words(block.secondsOf(Kind.CUT));
  }
}
