package drumline.drawing.wall;

import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.SvgNumber;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.TextFit;
import drumline.drawing.svg.TextWidth;
import java.util.Optional;

/**
 * A title inside its block: level if it fits, else upright; empty where only a number can stand.
 *
 * @param fit lines and size
 * @param room free room inside the block
 * @param way direction of the text
 */
record BlockLabel(TextFit fit, Box room, Way way) {

  private static final double LARGEST = 10.5;
  private static final double GOOD = 9;
  private static final double SMALLEST = 8;

  enum Way {
    LEVEL,
    UPRIGHT
  }

  static Optional<BlockLabel> find(String title, Box room) {
    return level(title, room, GOOD)
        .or(() -> upright(title, room, GOOD))
        .or(() -> level(title, room, SMALLEST))
        .or(() -> upright(title, room, SMALLEST));
  }

  private static Optional<BlockLabel> level(String title, Box room, double smallest) {
    return TextFit.find(title, room.width(), room.height(), LARGEST, smallest)
        .map(fit -> new BlockLabel(fit, room, Way.LEVEL));
  }

  private static Optional<BlockLabel> upright(String title, Box room, double smallest) {
    double along = room.height();
    double across = room.width();
    return TextFit.find(title, along, across, LARGEST, smallest)
        .map(fit -> new BlockLabel(fit, room, Way.UPRIGHT));
  }

  void draw(SvgPen pen) {
    double middleX = room.x() + room.width() / 2;
    double middleY = room.y() + room.height() / 2;
    int count = fit.lines().size();
    for (int i = 0; i < count; i++) {
      String line = fit.lines().get(i);
      double off = (i - (count - 1) / 2.0) * fit.size() * TextFit.LINE_RATIO + fit.size() * 0.35;
      String length = SvgNumber.text(TextWidth.of(line, fit.size()));
      String[] tight = {"textLength", length, "lengthAdjust", "spacingAndGlyphs"};
      if (way == Way.LEVEL) {
        pen.text("", middleX, middleY + off, fit.size(), Anchor.MIDDLE, line, tight);
      } else {
        pen.upText("", middleX + off, middleY, fit.size(), Anchor.MIDDLE, line, tight);
      }
    }
  }
}
