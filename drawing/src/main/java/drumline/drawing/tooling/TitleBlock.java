package drumline.drawing.tooling;

import drumline.drawing.DrawingUnits;
import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.SvgPen;
import java.util.Locale;

/** Foot of a tooling sheet: what it is, of what, on which machine, and the usual cautions. */
final class TitleBlock {

  private TitleBlock() {}

  static void draw(SvgPen pen, Box room, ToolSheet sheet, String title, String scale) {
    pen.line("wide", room.x(), room.y(), room.right(), room.y());
    double left = room.x() + 3;
    double right = room.right() - 3;
    pen.text("bold", left, room.y() + 6.3, 5, Anchor.START, sheet.part().name());
    pen.text("soft", left, room.y() + 11.6, 3.2, Anchor.START, sheet.machine().title());
    pen.text("bold", right, room.y() + 6.3, 4, Anchor.END, title);
    String units = sheet.units() == DrawingUnits.METRIC ? "mm" : "inch; titles of work in mm";
    pen.text(
        "soft",
        right,
        room.y() + 11.6,
        3,
        Anchor.END,
        "scale "
            + scale
            + " · lengths in "
            + units
            + String.format(Locale.ROOT, " · cycle %.2f s", sheet.timeline().cycleS()));
    double middle = room.x() + room.width() / 2;
    pen.text(
        "",
        middle,
        room.y() + 4.8,
        2.8,
        Anchor.MIDDLE,
        "Planning drawing: tools of usual form. Prove clamping, speeds and clearances on the");
    pen.text(
        "",
        middle,
        room.y() + 8.6,
        2.8,
        Anchor.MIDDLE,
        "machine, guards closed, by qualified people and within the machine maker's limits.");
    pen.text(
        "soft",
        middle,
        room.y() + 12.4,
        2.6,
        Anchor.MIDDLE,
        "* speed of the driven tool · out: length out of the holder · double-dotted: takes its turn"
            + " on the slide");
  }
}
