package drumline.drawing.part;

import drumline.drawing.DrawingUnits;
import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.SvgSheet;
import drumline.drawing.svg.TextWidth;
import drumline.drawing.view.DrawingScale;
import drumline.drawing.view.ViewFrame;
import drumline.shop.contour.End;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.List;

/**
 * The print: the piece to scale, upper half cut, lower half from outside, with its dimensions.
 *
 * <p>Source: [ISO-128-2] line widths 0.5 and 0.25 mm, long-dashed dotted line 04.1 for axes,
 * long-dashed double-dotted line 05.1 for the bar's outline; [ISO-129-1] dimensions; [ISO-6410-1]
 * threads (all from memory).
 *
 * <p>Known limits: holes and slots from the side are turned into the plane of the section; the
 * curves where milled faces run out are not drawn; edges of more than one kind on the same corner
 * are drawn as the first.
 */
public final class PartDrawing {

  private static final double SHEET_MM = 184;
  private static final double MARGIN_MM = 4;
  private static final double HIGHEST_PIECE_MM = 100;
  private static final double BARE_SIDE_MM = 10;
  private static final double NOTE_MM = 2.5;
  private static final double NOTE_LINE_MM = 3.9;
  private static final double COLUMN_GAP_MM = 6;
  private static final double SCALE_ROOM_MM = 62;

  private PartDrawing() {}

  /** The drawing for a page. */
  public static String svg(Part part, Bar bar, DrawingUnits units) {
    return svg(part, bar, PartSheet.screen(units));
  }

  /** The drawing. */
  public static String svg(Part part, Bar bar, PartSheet sheet) {
    PrintText text = new PrintText(part, sheet.units());
    EdgeNotes edges = new EdgeNotes(part, text);
    PieceView piece = new PieceView(part, bar);
    Marked marked = new Marked(sheet.marked());
    SideTexts sides = new SideTexts(part, text, edges);
    SideStack left = new SideStack(sides.notes(End.FRONT), End.FRONT);
    SideStack right = new SideStack(sides.notes(End.BACK), End.BACK);
    double leftMm = Math.max(BARE_SIDE_MM, left.widthMm());
    double rightMm = Math.max(BARE_SIDE_MM, right.widthMm());
    double roomMm = SHEET_MM - 2 * MARGIN_MM - leftMm - rightMm;
    DrawingScale scale =
        DrawingScale.of(part.lengthMm(), 2 * piece.outerRMm(), roomMm, HIGHEST_PIECE_MM);
    List<Flag> flags = new FlagTexts(part, text, piece.milled().surface(), edges).flags(bar);
    double lengthMm = part.lengthMm() * scale.ratio();
    double x0 = MARGIN_MM + leftMm + Math.max(0, (roomMm - lengthMm) / 2);
    FlagTower tower = new FlagTower(flags, new ViewFrame(x0, 0, scale.ratio()));
    double shift = Math.max(0, MARGIN_MM - tower.leftMm());
    double topY = 16 + tower.heightMm();
    double axisY = topY + 4 + piece.outerRMm() * scale.ratio();
    ViewFrame frame = new ViewFrame(x0 + shift, axisY, scale.ratio());
    double width = Math.max(SHEET_MM, tower.rightMm() + shift + MARGIN_MM);
    SvgPen pen = new SvgPen();
    piece.draw(pen, frame, marked);
    new FlagTower(flags, frame).draw(pen, frame, topY, marked);
    double faceX = frame.x(part.lengthMm());
    double lowY = left.draw(pen, frame, frame.x(0), topY + 4, marked);
    lowY = Math.max(lowY, right.draw(pen, frame, faceX, topY + 4, marked));
    double belowY = frame.down(piece.outerRMm());
    RunningLengths lengths = new RunningLengths(part, text);
    lowY = Math.max(lowY, lengths.draw(pen, piece.milled().lower(), frame, belowY));
    List<String> notes = PrintNotes.of(part, bar, text, edges, sheet.units());
    double height = foot(pen, part, notes, scale, sheet.units(), lowY + 7, width);
    return new SvgSheet(
            "print", part.name(), words(part), width, height, SvgSheet.Unit.MM, sheet.look())
        .svg(pen);
  }

  private static double foot(
      SvgPen pen,
      Part part,
      List<String> notes,
      DrawingScale scale,
      DrawingUnits units,
      double y,
      double width) {
    double titleMm = width - 2 * MARGIN_MM;
    double titleSize = Math.min(4.2, titleMm / TextWidth.bold(part.name() + " ", 1));
    pen.text("bold", MARGIN_MM, 8, titleSize, Anchor.START, part.name());
    int rows = (notes.size() + 1) / 2;
    double firstMm = widest(notes.subList(0, rows)) + COLUMN_GAP_MM;
    double secondMm = widest(notes.subList(rows, notes.size()));
    for (int i = 0; i < notes.size(); i++) {
      double x = MARGIN_MM + (i < rows ? 0 : firstMm);
      pen.text("soft", x, y + NOTE_LINE_MM * (i % rows), NOTE_MM, Anchor.START, notes.get(i));
    }
    boolean isBeside = firstMm + secondMm + SCALE_ROOM_MM <= width - 2 * MARGIN_MM;
    double bottom = y + Math.max(0, rows - 1) * NOTE_LINE_MM;
    double scaleY = isBeside ? Math.max(bottom, y + 4) : bottom + 9;
    double mmPerUnit = units == DrawingUnits.METRIC ? 1 : 25.4;
    scale.draw(pen, width - MARGIN_MM - 5, scaleY, mmPerUnit, units.symbol());
    return scaleY + MARGIN_MM;
  }

  private static double widest(List<String> notes) {
    return notes.stream().mapToDouble(note -> TextWidth.of(note, NOTE_MM)).max().orElse(0);
  }

  private static String words(Part part) {
    return "Half-section drawing of "
        + part.name()
        + ": upper half cut, lower half from outside, front face at the left, with "
        + part.outside().size()
        + " outside steps, "
        + (part.frontBore().size() + part.backBore().size())
        + " bore steps and "
        + part.features().size()
        + " features.";
  }
}
