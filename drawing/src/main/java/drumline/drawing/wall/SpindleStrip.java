package drumline.drawing.wall;

import drumline.cycle.timeline.PositionTimeline.FixedSpan;
import drumline.cycle.timeline.SpindleSpan;
import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.HatchKind;
import drumline.drawing.svg.SvgPath;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.TextWidth;
import drumline.shop.operation.SpindleCondition;
import java.util.Locale;

/** The narrow strips beside the lanes: what the spindle does, and what happens without a tool. */
final class SpindleStrip {

  private static final double TEXT = 9;
  private static final double SMALLEST = 7.5;
  private static final double SHORTENED_ROOM = 24;

  private SpindleStrip() {}

  static void draw(SvgPen pen, WallColumn column, TimeScale time) {
    pen.open("spindle-strip");
    for (SpindleSpan span : column.timeline().spindle()) {
      Box box = box(column.x(), WallColumn.SPINDLE_WIDTH, time, span.startS(), span.endS());
      if (span.kind() == SpindleSpan.Kind.CHANGE) {
        change(pen, box);
      } else {
        keep(pen, span, box);
      }
    }
    for (FixedSpan span : column.timeline().fixed()) {
      Box box = box(column.fixedX(), column.fixedWidth(), time, span.startS(), span.endS());
      pen.open("").title(span.title() + ", " + Seconds.words(span.endS() - span.startS()));
      pen.rect("fixed", box.inset(0.8));
      uprightFitting(pen, "", box, span.title());
      pen.close();
    }
    pen.close();
  }

  private static Box box(double x, double width, TimeScale time, double startS, double endS) {
    return new Box(x, time.y(startS), width, (endS - startS) * time.pxPerS());
  }

  private static void keep(SvgPen pen, SpindleSpan span, Box box) {
    pen.open("").title(words(span) + " for " + Seconds.words(span.endS() - span.startS()));
    switch (span.condition()) {
      case TURNING, TURNING_ANY -> pen.rect("spindle spindle-turning", box);
      case HELD -> pen.rect("spindle spindle-still", box);
      case C_AXIS -> pen.rect("spindle", box, "fill", SvgPen.fill(HatchKind.SPARSE));
    }
    if (span.condition() == SpindleCondition.C_AXIS) {
      double half = TextWidth.of(words(span), TEXT) / 2 + 2;
      double middle = box.y() + box.height() / 2;
      if (2 * half < box.height()) {
        pen.rect("plate", new Box(box.x() + 2, middle - half, box.width() - 4, 2 * half));
      }
    }
    boolean isDark = span.condition() == SpindleCondition.HELD;
    uprightFitting(pen, isDark ? "on-dark" : "", box, words(span));
    pen.close();
  }

  private static String words(SpindleSpan span) {
    return switch (span.condition()) {
      case TURNING -> String.format(Locale.ROOT, "%.0f/min", span.revPerMin());
      case TURNING_ANY ->
          span.revPerMin() > 0
              ? String.format(Locale.ROOT, "%.0f/min", span.revPerMin())
              : "any speed";
      case HELD -> "held";
      case C_AXIS -> "C axis";
    };
  }

  /** Speed changes are a slope across the strip. */
  private static void change(SvgPen pen, Box box) {
    pen.rect("spindle spindle-turning", box);
    SvgPath slope = new SvgPath().move(box.x(), box.y()).line(box.right(), box.bottom());
    slope.line(box.x(), box.bottom()).close();
    pen.path("spindle-still", slope);
  }

  /** The words upright, smaller or shortened where the strip is short; level as a last way. */
  private static void uprightFitting(SvgPen pen, String classes, Box box, String words) {
    double middleX = box.x() + box.width() / 2;
    double middleY = box.y() + box.height() / 2;
    double room = box.height() - 4;
    for (double size = TEXT; size >= SMALLEST; size -= 0.5) {
      if (TextWidth.of(words, size) <= room) {
        pen.upText(classes, middleX + size * 0.35, middleY, size, Anchor.MIDDLE, words);
        return;
      }
    }
    if (room >= SHORTENED_ROOM) {
      String part = WallLegend.shortened(words, room, SMALLEST);
      pen.upText(classes, middleX + SMALLEST * 0.35, middleY, SMALLEST, Anchor.MIDDLE, part);
    }
  }
}
