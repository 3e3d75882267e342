package drumline.drawing.tooling;

import drumline.drawing.DrawingUnits;
import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.TextWidth;
import java.util.List;

/** The table of a frame's tools. */
final class RowTable {

  static final double HEAD_MM = 5.4;
  static final double ROW_MM = 8.2;

  private static final double SIZE = 3.2;
  private static final double SMALL = 2.6;
  private static final double COLUMN_MM = 13;
  private static final double NUMBER_MM = 9;
  private static final double TRAVEL_MM = 9;

  private RowTable() {}

  static double heightMm(int rows) {
    return HEAD_MM + rows * ROW_MM;
  }

  static void draw(SvgPen pen, List<ToolRow> rows, Box room, DrawingUnits units) {
    List<String> heads =
        List.of(
            "rev/min",
            units.speedSymbol(),
            units.symbol() + "/rev",
            "time s",
            "out " + units.symbol());
    double figures = room.right() - COLUMN_MM * heads.size();
    for (int i = 0; i < heads.size(); i++) {
      double x = figures + COLUMN_MM * (i + 1);
      pen.text("soft", x, room.y() + 3.6, SMALL, Anchor.END, heads.get(i));
    }
    for (int i = 0; i < rows.size(); i++) {
      row(pen, rows.get(i), room, room.y() + HEAD_MM + i * ROW_MM, figures);
    }
  }

  private static void row(SvgPen pen, ToolRow row, Box room, double y, double figures) {
    pen.line("lane", room.x(), y, room.right(), y);
    double base = y + 3.7;
    double left = room.x() + NUMBER_MM;
    double width = figures - left - TRAVEL_MM;
    pen.text("bold", room.x(), base, SIZE, Anchor.START, row.number());
    pen.text("", left, base, fit(row.title(), SIZE, width), Anchor.START, row.title());
    double below = figures + COLUMN_MM * 5 - left;
    pen.text("soft", left, base + 3.4, fit(row.tool(), SMALL, below), Anchor.START, row.tool());
    pen.text("", figures + 1, base, SIZE, Anchor.END, row.travel());
    for (int i = 0; i < row.figures().size(); i++) {
      double x = figures + COLUMN_MM * (i + 1);
      pen.text("", x, base, SIZE, Anchor.END, row.figures().get(i));
    }
  }

  /** The type size at which a text fits, never larger than wished. */
  private static double fit(String text, double size, double width) {
    return Math.min(size, width / TextWidth.of(text + " ", 1));
  }
}
