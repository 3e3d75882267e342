package drumline.drawing.tooling;

import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.SvgSheet;
import drumline.drawing.svg.TextWidth;
import drumline.drawing.tooling.ToolFrame.Governs;
import drumline.drawing.view.DrawingScale;
import java.util.ArrayList;
import java.util.List;

/**
 * The tool layout: what a setter builds from. One frame for each position in the order of travel,
 * with the workpiece, what is removed there, the tools at the ends of their cuts, and their table.
 *
 * <p>Source: [ISO-128-2] lines: wide for the work and cutting edges, narrow for bodies, long-dashed
 * double-dotted for tools that take turns on a slide; [ISO-5457] A3 in landscape with 20 mm at the
 * left for binding (both from memory). Known limits: cross tools are turned into the plane of the
 * section, those of the first cross slide above, of the second below.
 */
public final class ToolLayout {

  private static final double WIDTH_MM = 420;
  private static final double HEIGHT_MM = 297;
  private static final double BIND_MM = 20;
  private static final double MARGIN_MM = 10;
  private static final double GAP_MM = 5;
  private static final double HEAD_MM = 8.5;
  private static final double FOOT_MM = 15;
  private static final int COLUMNS = 3;
  private static final int MOST = 6;

  private final ToolSheet sheet;
  private final List<ToolFrame> frames;

  private ToolLayout(ToolSheet sheet) {
    this.sheet = sheet;
    this.frames = new ToolFrames(sheet).frames();
  }

  /** The sheets in order, each an A3 in landscape that is also read at the size of A4. */
  public static List<String> svgs(ToolSheet sheet) {
    return new ToolLayout(sheet).sheets();
  }

  /** How many sheets there are. */
  public static int sheetCount(ToolSheet sheet) {
    return new ToolLayout(sheet).count();
  }

  private int count() {
    return Math.max(1, (frames.size() + MOST - 1) / MOST);
  }

  private List<String> sheets() {
    int count = count();
    DrawingScale scale = scale();
    List<String> sheets = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<ToolFrame> here = frames.subList(i * MOST, Math.min(frames.size(), (i + 1) * MOST));
      sheets.add(sheet(here, scale, i + 1, count));
    }
    return sheets;
  }

  private double cellWidth() {
    return (WIDTH_MM - BIND_MM - MARGIN_MM - GAP_MM * (COLUMNS + 1)) / COLUMNS;
  }

  private double cellHeight() {
    return (HEIGHT_MM - 2 * MARGIN_MM - FOOT_MM - 3 * GAP_MM) / 2;
  }

  private Box picture(Box cell, ToolFrame frame) {
    double table = RowTable.heightMm(frame.rows().size());
    return new Box(
        cell.x(), cell.y() + HEAD_MM, cell.width(), cell.height() - HEAD_MM - table - 1.5);
  }

  /** One scale for all frames: the greatest at which the fullest frame still shows its tools. */
  private DrawingScale scale() {
    Box cell = new Box(0, 0, cellWidth(), cellHeight());
    double ratio = Double.POSITIVE_INFINITY;
    for (ToolFrame frame : frames) {
      Box room = picture(cell, frame);
      ratio = Math.min(ratio, FramePicture.roomRatio(room, sheet.states().bar()));
    }
    return DrawingScale.of(1, 1, ratio, ratio);
  }

  private String sheet(List<ToolFrame> here, DrawingScale scale, int number, int count) {
    SvgPen pen = new SvgPen();
    pen.rect(
        "sheet-frame",
        new Box(BIND_MM, MARGIN_MM, WIDTH_MM - BIND_MM - MARGIN_MM, HEIGHT_MM - 2 * MARGIN_MM));
    for (int i = 0; i < here.size(); i++) {
      double x = BIND_MM + GAP_MM + (i % COLUMNS) * (cellWidth() + GAP_MM);
      int row = i / COLUMNS;
      double y = MARGIN_MM + GAP_MM + row * (cellHeight() + GAP_MM);
      frame(pen, here.get(i), new Box(x, y, cellWidth(), cellHeight()), scale);
    }
    TitleBlock.draw(
        pen,
        new Box(BIND_MM, HEIGHT_MM - MARGIN_MM - FOOT_MM, WIDTH_MM - BIND_MM - MARGIN_MM, FOOT_MM),
        sheet,
        "tool layout, sheet " + number + " of " + count,
        scale.words());
    return new SvgSheet(
            "tooling",
            "Tool layout of " + sheet.part().name() + ", sheet " + number + " of " + count,
            words(here),
            WIDTH_MM,
            HEIGHT_MM,
            SvgSheet.Unit.MM,
            sheet.look())
        .svg(pen);
  }

  private void frame(SvgPen pen, ToolFrame frame, Box cell, DrawingScale scale) {
    boolean governs = frame.governs() == Governs.YES;
    pen.open(governs ? "position governs" : "position");
    pen.text("bold", cell.x(), cell.y() + 5, 5, Anchor.START, frame.title());
    double titleMm = TextWidth.bold(frame.title(), 5) + 4;
    String state = governs ? "sets the cycle · " + frame.state() : frame.state();
    double size = Math.min(3.3, (cell.width() - titleMm) / TextWidth.of(state + " ", 1));
    pen.text(governs ? "accent-text" : "soft", cell.right(), cell.y() + 5, size, Anchor.END, state);
    Box room = picture(cell, frame);
    new FramePicture(pen, frame, room, scale.ratio(), sheet.states().bar()).draw();
    Box table = new Box(cell.x(), room.bottom() + 1.5, cell.width(), 0);
    RowTable.draw(pen, frame.rows(), table, sheet.units());
    pen.close();
  }

  private static String words(List<ToolFrame> here) {
    StringBuilder words = new StringBuilder("Workpiece and tools");
    for (ToolFrame frame : here) {
      words.append("; ").append(frame.title()).append(": ");
      words.append(
          frame.rows().isEmpty()
              ? "no tool"
              : String.join(
                  ", ", frame.rows().stream().map(r -> r.number() + " " + r.title()).toList()));
    }
    return words.append('.').toString();
  }
}
