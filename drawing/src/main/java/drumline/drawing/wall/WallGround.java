package drumline.drawing.wall;

import drumline.cycle.timeline.PositionTimeline;
import drumline.cycle.timeline.Timeline;
import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.HatchKind;
import drumline.drawing.svg.SvgNumber;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.wall.WallColumn.Place;
import drumline.drawing.wall.WallColumn.Rank;
import java.util.Comparator;
import java.util.List;

/** What lies under and over the blocks: time grid, lanes, index band, the cycle's line, slack. */
final class WallGround {

  private static final double AXIS_TEXT = 10;

  private final Timeline timeline;
  private final List<WallColumn> columns;
  private final TimeScale time;
  private final double left;

  WallGround(Timeline timeline, List<WallColumn> columns, TimeScale time, double left) {
    this.timeline = timeline;
    this.columns = columns;
    this.time = time;
    this.left = left;
  }

  void under(SvgPen pen) {
    pen.open("time");
    double right = columns.get(columns.size() - 1).right();
    double stepS = time.stepS();
    for (int i = 0; i * stepS <= time.longestS() + 1e-9; i++) {
      double y = time.y(i * stepS);
      pen.line("grid", left - 4, y, right, y);
      boolean isClear = Math.abs(y - time.y(timeline.workS())) > AXIS_TEXT * 1.1;
      if (isClear) {
        String words = SvgNumber.text(i * stepS) + (i == 0 ? " s" : "");
        pen.text("soft", left - 8, y + AXIS_TEXT * 0.35, AXIS_TEXT, Anchor.END, words);
      }
    }
    pen.close();
    for (WallColumn column : columns) {
      double endS = column.place() == Place.DRUM ? timeline.workS() : time.longestS();
      double height = endS * time.pxPerS();
      for (WallLane lane : column.lanes()) {
        pen.rect("lane", new Box(lane.x(), time.topY(), lane.width(), height));
      }
    }
  }

  void over(SvgPen pen) {
    WallColumn last = columns.get(0);
    for (WallColumn column : columns) {
      last = column.place() == Place.DRUM ? column : last;
      slack(pen, column);
    }
    double workY = time.y(timeline.workS());
    double width = last.right() - left;
    Box band = new Box(left, workY, width, timeline.indexS() * time.pxPerS());
    pen.rect("index-band", band, "fill", SvgPen.fill(HatchKind.BAND));
    pen.line("rule", left, band.bottom(), last.right(), band.bottom());
    if (band.height() >= 14) {
      String words = "index " + Seconds.words(timeline.indexS());
      double middle = left + width / 2;
      pen.rect("plate", new Box(middle - 42, band.y() + band.height() / 2 - 7, 84, 14));
      pen.text("", middle, band.y() + band.height() / 2 + 3.6, AXIS_TEXT, Anchor.MIDDLE, words);
    }
    pen.line("cycle-line", left - 4, workY, last.right() + 4, workY);
    String work = SvgNumber.text(Math.round(timeline.workS() * 100) / 100.0);
    pen.text("bold", left - 8, workY + AXIS_TEXT * 0.35, AXIS_TEXT, Anchor.END, work);
    pen.text("soft", left - 8, footY(band.bottom()), AXIS_TEXT, Anchor.END, "busy");
    for (WallColumn column : columns) {
      foot(pen, column, band.bottom());
    }
  }

  private void slack(SvgPen pen, WallColumn column) {
    PositionTimeline position = column.timeline();
    double fromY = time.y(position.busyS());
    double limitS = Math.min(position.busyS() + position.slackS(), time.longestS());
    double toY = time.y(column.place() == Place.DRUM ? timeline.workS() : limitS);
    String words = Seconds.words(position.slackS());
    if (column.rank() == Rank.GOVERNS || toY - fromY < 14) {
      return;
    }
    double x = clearX(column);
    double middle = (fromY + toY) / 2;
    pen.open("slack").title(column.words() + ": " + words + " to spare");
    if (toY - fromY > 44) {
      pen.line("slack-line", x, fromY + 3, x, middle - 8);
      pen.line("slack-line", x, middle + 8, x, toY - 3);
      pen.line("slack-line", x - 4, fromY + 3, x + 4, fromY + 3);
      pen.line("slack-line", x - 4, toY - 3, x + 4, toY - 3);
    }
    pen.rect("plate", new Box(x - 17, middle - 6.5, 34, 13));
    pen.text("soft", x, middle + 3.6, AXIS_TEXT, Anchor.MIDDLE, words);
    pen.close();
  }

  /** Middle of the widest lane. */
  private static double clearX(WallColumn column) {
    return column.lanes().stream()
        .max(Comparator.comparingDouble(WallLane::width))
        .map(lane -> lane.x() + lane.width() / 2)
        .orElse(column.middle());
  }

  private double footY(double bandBottom) {
    return Math.max(bandBottom, time.bottomY()) + 15;
  }

  /** Time that each position needs, and where it touches the cycle's line. */
  private void foot(SvgPen pen, WallColumn column, double bandBottom) {
    boolean governs = column.rank() == Rank.GOVERNS;
    pen.open(governs ? "governs" : "follows");
    if (governs && column.place() == Place.DRUM) {
      double y = time.y(timeline.workS());
      pen.line("reach", column.x(), y, column.right(), y);
    }
    String words = Seconds.words(column.timeline().busyS());
    String classes = governs ? "bold accent-text" : "";
    pen.text(classes, column.middle(), footY(bandBottom), 11, Anchor.MIDDLE, words);
    pen.close();
  }
}
