package drumline.drawing.part;

import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.SvgPath;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.TextWidth;
import drumline.drawing.view.Arrow;
import drumline.drawing.view.Spread;
import drumline.drawing.view.ViewFrame;
import drumline.shop.contour.End;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Stacks the dimensions beside the piece and leads each through the bore's mouth to its place. */
final class SideStack {

  private static final double TEXT_MM = 2.5;
  private static final double LINE_MM = 3.5;
  private static final double ROOM_MM = 9;
  private static final double REACH_MM = 7.5;
  private static final double LEAD_MM = 1.5;

  private final List<SideNote> notes;
  private final End end;

  SideStack(List<SideNote> notes, End end) {
    this.end = end;
    List<SideNote> sorted = new ArrayList<>(notes);
    double inwards = end == End.FRONT ? 1 : -1;
    sorted.sort(
        Comparator.comparing(SideNote::way)
            .reversed()
            .thenComparing(Comparator.comparingDouble(note -> sortKey(note, inwards))));
    this.notes = sorted;
  }

  /** Top to bottom: faces from the outside inwards, then bores from the mouth inwards. */
  private static double sortKey(SideNote note, double inwards) {
    return note.way() == SideNote.Way.FACE ? -note.rMm() : note.zMm() * inwards;
  }

  /** Room that the stack takes beside the piece; 0 without dimensions. */
  double widthMm() {
    double widest =
        notes.stream()
            .flatMap(note -> note.lines().stream())
            .mapToDouble(line -> TextWidth.of(line, TEXT_MM))
            .max()
            .orElse(-REACH_MM - 1);
    return widest + REACH_MM + 1;
  }

  /** Draws the stack, not higher than a line on the sheet; tells its lowest point. */
  double draw(SvgPen pen, ViewFrame frame, double faceX, double topY, Marked marked) {
    double[] entryY = entries(frame);
    double[] textY = Spread.apply(entryY, ROOM_MM);
    double tooHigh = textY.length == 0 ? 0 : Math.max(0, topY + LINE_MM - textY[0]);
    double side = end == End.FRONT ? -1 : 1;
    double lowest = frame.axisY();
    for (int i = 0; i < notes.size(); i++) {
      SideNote note = notes.get(i);
      double y = textY[i] + tooHigh;
      double textX = faceX + side * REACH_MM;
      pen.open(marked.classes(note.element()), "data-element", note.element());
      leader(pen, note, frame, faceX, side, y, entryY[i]);
      Anchor anchor = end == End.FRONT ? Anchor.END : Anchor.START;
      pen.text("", textX, y - 0.5, TEXT_MM, anchor, note.lines().get(0));
      pen.text("", textX, y + LINE_MM - 0.5, TEXT_MM, anchor, note.lines().get(1));
      pen.close();
      lowest = Math.max(lowest, y + LINE_MM + 1);
    }
    return lowest;
  }

  private static void leader(
      SvgPen pen,
      SideNote note,
      ViewFrame frame,
      double faceX,
      double side,
      double y,
      double entryY) {
    double tipX = frame.x(note.zMm());
    double tipY = frame.up(note.rMm());
    double startX = faceX + side * (REACH_MM - 0.8);
    SvgPath path =
        new SvgPath().move(startX, y - 0.4).line(faceX + side * (REACH_MM - 2.2), y - 0.4);
    double kneeX = faceX + side * 2.5;
    if (note.way() == SideNote.Way.FACE) {
      path.line(tipX, tipY);
      pen.path("thin", path);
      Arrow.draw(pen, faceX + side * (REACH_MM - 2.2), y - 0.4, tipX, tipY);
    } else {
      double lastX = tipX + side * Math.min(0.6 * (entryY - tipY), Math.abs(tipX - faceX));
      path.line(kneeX, entryY).line(lastX, entryY).line(tipX, tipY);
      pen.path("thin", path);
      Arrow.draw(pen, lastX, entryY, tipX, tipY);
    }
  }

  /** Heights at which the leaders pass the face, the deepest bore nearest to the axis. */
  private double[] entries(ViewFrame frame) {
    double[] entryY = new double[notes.size()];
    double aboveAxis = 0;
    for (int i = notes.size() - 1; i >= 0; i--) {
      SideNote note = notes.get(i);
      double tip = note.rMm() * frame.scale();
      if (note.way() == SideNote.Way.BORE) {
        aboveAxis = Math.max(aboveAxis + LEAD_MM, Math.min(tip * 0.4, tip - 1.5));
        entryY[i] = frame.axisY() - aboveAxis;
      } else {
        entryY[i] = frame.axisY() - tip;
      }
    }
    for (int i = 1; i < entryY.length; i++) {
      entryY[i] = Math.max(entryY[i], entryY[i - 1]);
    }
    return entryY;
  }
}
