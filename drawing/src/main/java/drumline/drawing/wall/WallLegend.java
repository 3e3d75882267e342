package drumline.drawing.wall;

import drumline.cycle.timeline.TimeElement.Kind;
import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.HatchKind;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.TextWidth;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Under the wall: the patterns' meanings, and the titles of blocks that carry only a number. */
final class WallLegend {

  private static final double TEXT = 10;
  private static final double ROW = 16;
  private static final double LEAST_ENTRY_WIDTH = 230;

  private WallLegend() {}

  /** Draws both and tells the lowest point. */
  static double draw(SvgPen pen, List<WallBlock> all, List<WallBlock> numbered, Box room) {
    double y = patterns(pen, all, room);
    return numbered.isEmpty()
        ? y
        : titles(pen, numbered, new Box(room.x(), y + 8, room.width(), 0));
  }

  private static double patterns(SvgPen pen, List<WallBlock> all, Box room) {
    Set<KindPattern> used = EnumSet.noneOf(KindPattern.class);
    all.forEach(block -> block.operation().ifPresent(o -> used.add(KindPattern.of(o.kind()))));
    pen.open("op legend");
    double x = room.x();
    double y = room.y();
    List<String> words = new ArrayList<>(List.of("tool moves", "tool dwells"));
    List<HatchKind> hatches = new ArrayList<>(List.of(HatchKind.SPARSE, HatchKind.SOLID));
    for (KindPattern kind : used) {
      words.add(kind.words());
      hatches.add(kind.hatch());
    }
    for (int i = 0; i < words.size(); i++) {
      double width = 20 + TextWidth.of(words.get(i), TEXT) + 18;
      if (x + width > room.right()) {
        x = room.x();
        y += ROW;
      }
      String classes = hatches.get(i) == HatchKind.SPARSE ? "move" : "kind";
      pen.rect(classes, new Box(x, y - 9, 14, 10), "fill", SvgPen.fill(hatches.get(i)));
      pen.text("", x + 20, y, TEXT, Anchor.START, words.get(i));
      x += width;
    }
    pen.close();
    return y + ROW;
  }

  private static double titles(SvgPen pen, List<WallBlock> numbered, Box room) {
    double longest = numbered.stream().mapToDouble(WallLegend::entryWidth).max().orElse(0);
    double entry = Math.max(LEAST_ENTRY_WIDTH, longest);
    int columns = Math.max(1, (int) (room.width() / entry));
    int rows = (numbered.size() + columns - 1) / columns;
    double width = room.width() / columns;
    pen.open("numbered");
    for (int i = 0; i < numbered.size(); i++) {
      WallBlock block = numbered.get(i);
      int columnAt = i / rows;
      double x = room.x() + width * columnAt;
      double y = room.y() + ROW * (i % rows);
      pen.text("bold", x + 14, y, TEXT, Anchor.END, String.valueOf(i + 1));
      String tail = tail(block);
      double titleRoom = width - 46 - TextWidth.of(tail, TEXT);
      pen.text("soft", x + width - 16, y, TEXT, Anchor.END, tail);
      pen.text("", x + 20, y, TEXT, Anchor.START, shortened(block.title(), titleRoom, TEXT));
    }
    pen.close();
    return room.y() + ROW * rows;
  }

  private static String tail(WallBlock block) {
    return block.column().name() + " · " + Seconds.words(block.span().lengthS());
  }

  private static double entryWidth(WallBlock block) {
    return 46 + TextWidth.of(block.title(), TEXT) + TextWidth.of(tail(block), TEXT) + 1;
  }

  /** The title, cut with an ellipsis where even a whole row is too short for it. */
  static String shortened(String title, double width, double size) {
    if (TextWidth.of(title, size) <= width) {
      return title;
    }
    int end = title.length();
    while (end > 1 && TextWidth.of(title.substring(0, end) + "…", size) > width) {
      end = title.offsetByCodePoints(end, -1);
    }
    return title.substring(0, end).stripTrailing() + "…";
  }

  /** Seconds at the cut, for the description. */
  static double cuttingS(List<WallBlock> blocks) {
    return blocks.stream().mapToDouble(block -> block.secondsOf(Kind.CUT)).sum();
  }
}
