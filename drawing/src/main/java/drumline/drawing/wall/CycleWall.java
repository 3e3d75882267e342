package drumline.drawing.wall;

import drumline.cycle.timeline.Timeline;
import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.SvgSheet;
import drumline.drawing.svg.TextWidth;
import drumline.drawing.wall.WallColumn.Place;
import drumline.drawing.wall.WallColumn.Rank;
import drumline.shape.workpiece.PositionState;
import drumline.shop.machine.Machine;
import drumline.shop.operation.Route;
import java.util.List;

/**
 * The cycle wall: one column for each position in the order of travel, time running down from the
 * index, one lane for each slide, operations as blocks whose height is their time. A strong line is
 * the end of the work; the position that touches it sets the cycle and is alone in the accent
 * colour, but for the hatching of what was just removed in the heads.
 *
 * <p>Every block stands at {@code y = top + start · scale} with a height of {@code length · scale};
 * the scale is on the document as {@code data-px-per-s}, the top as {@code data-top}.
 *
 * <p>Known limits: the pick-up spindle's column counts from the begin of gripping, not from the
 * index; what lies beyond a slide that the machine does not have is not drawn.
 */
public final class CycleWall {

  private static final double LEFT = 52;
  private static final double RIGHT = 14;
  private static final double TITLE_HEIGHT = 36;
  private static final double PICTURE_HEIGHT = 78;
  private static final double BOLD_RATIO = 1.12;

  private CycleWall() {}

  /** The wall for a page; heads may be empty. */
  public static String svg(
      Timeline timeline, Route route, Machine machine, List<PositionState> heads) {
    return svg(timeline, route, machine, heads, WallView.screen());
  }

  /**
   * The wall.
   *
   * @param heads the workpiece as it leaves each position; where one is missing its head stays
   *     empty, and without any there is no row of heads
   * @throws IllegalArgumentException if the timeline has no positions
   */
  public static String svg(
      Timeline timeline, Route route, Machine machine, List<PositionState> heads, WallView view) {
    if (timeline.positions().isEmpty()) {
      throw new IllegalArgumentException("timeline: no positions, allowed: at least 1");
    }
    double picture = heads.isEmpty() ? 0 : PICTURE_HEIGHT;
    double topY = TITLE_HEIGHT + WallHeads.NUMBER_HEIGHT + picture + WallHeads.LANE_NAME_HEIGHT;
    List<WallColumn> columns = new WallColumns(timeline, machine).of(LEFT, view.widthPx() - RIGHT);
    TimeScale time = TimeScale.of(timeline, topY, view.timePx());
    List<WallBlock> blocks = WallBlock.of(columns, route, time);
    SvgPen pen = new SvgPen();
    title(pen, timeline, machine, view.widthPx());
    pen.open(
        "wall",
        "data-px-per-s",
        String.valueOf(time.pxPerS()),
        "data-top",
        String.valueOf(time.topY()));
    WallHeads.draw(pen, columns, heads, TITLE_HEIGHT, picture);
    WallGround ground = new WallGround(timeline, columns, time, LEFT);
    ground.under(pen);
    BlockPainter painter = new BlockPainter(time, view.wrong());
    columns.forEach(column -> column(pen, column, blocks, painter, time));
    ground.over(pen);
    pen.close();
    double footY = Math.max(time.bottomY(), time.y(timeline.cycleS())) + 44;
    Box room = new Box(LEFT, footY, view.widthPx() - LEFT - RIGHT, 0);
    double height = WallLegend.draw(pen, blocks, painter.numbered(), room) + 4;
    String name = "Cycle wall, " + machine.title();
    return new SvgSheet(
            "wall",
            name,
            words(timeline, blocks, columns),
            view.widthPx(),
            height,
            SvgSheet.Unit.PX,
            view.look())
        .svg(pen);
  }

  private static void column(
      SvgPen pen, WallColumn column, List<WallBlock> blocks, BlockPainter painter, TimeScale time) {
    pen.open(column.rank() == Rank.GOVERNS ? "column governs" : "column follows");
    SpindleStrip.draw(pen, column, time);
    blocks.stream()
        .filter(block -> block.column().equals(column))
        .forEach(block -> painter.draw(pen, block));
    pen.close();
  }

  private static void title(SvgPen pen, Timeline timeline, Machine machine, double width) {
    String cycle =
        "cycle "
            + Seconds.words(timeline.cycleS())
            + " = work "
            + Seconds.words(timeline.workS())
            + " + index "
            + Seconds.words(timeline.indexS())
            + (timeline.piecesPerIndexCount() > 1
                ? ", " + timeline.piecesPerIndexCount() + " pieces per index"
                : "");
    pen.text("", width - RIGHT, 22, 13, Anchor.END, cycle);
    double room = width - LEFT - RIGHT - TextWidth.of(cycle, 13) - 24;
    String name = WallLegend.shortened(machine.title(), room / BOLD_RATIO, 14);
    pen.text("bold", LEFT, 22, 14, Anchor.START, name);
  }

  private static String words(Timeline timeline, List<WallBlock> blocks, List<WallColumn> columns) {
    String governing =
        columns.stream()
            .filter(column -> column.rank() == Rank.GOVERNS)
            .map(WallColumn::words)
            .findFirst()
            .orElse("no position");
    long positions = columns.stream().filter(c -> c.place() == Place.DRUM).count();
    return blocks.size()
        + " operations on "
        + positions
        + " positions; "
        + governing
        + " sets the cycle of "
        + Seconds.words(timeline.cycleS())
        + "; tools cut for "
        + Seconds.words(WallLegend.cuttingS(blocks))
        + " in all.";
  }
}
