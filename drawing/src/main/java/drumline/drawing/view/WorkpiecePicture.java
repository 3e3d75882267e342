package drumline.drawing.view;

import drumline.drawing.svg.Box;
import drumline.drawing.svg.HatchKind;
import drumline.drawing.svg.SvgPath;
import drumline.drawing.svg.SvgPen;
import drumline.shape.section.HalfSection;
import drumline.shape.workpiece.PositionState;
import drumline.shape.workpiece.PositionState.Hold;
import drumline.shape.workpiece.WorkpieceStates;
import java.util.List;

/** A small half-section of the workpiece with what was just removed. */
public final class WorkpiecePicture {

  private static final double BREAK_MM = 0.6;

  private WorkpiecePicture() {}

  /** The scale at which all these states fit into a room. */
  public static double scale(List<PositionState> states, double width, double height) {
    double scale = Double.POSITIVE_INFINITY;
    for (PositionState state : states) {
      HalfSection all = state.workpiece().union(state.removed());
      if (!all.isEmpty()) {
        scale = Math.min(scale, width / (all.toZMm() - all.fromZMm() + BREAK_MM));
        scale = Math.min(scale, height / (2 * all.outerRMm()));
      }
    }
    return Double.isFinite(scale) ? scale : 1;
  }

  /** Length in mm from the frontmost to the backmost place of all states. */
  public static double lengthMm(WorkpieceStates states) {
    return states.bar().toZMm() - states.bar().fromZMm();
  }

  /** Draws one state so that the same z stands at the same place in every room of this width. */
  public static void draw(
      SvgPen pen, PositionState state, Box room, double scale, double fromZMm, double toZMm) {
    double x0 = room.x() + (room.width() - (toZMm - fromZMm) * scale) / 2 - fromZMm * scale;
    ViewFrame frame = new ViewFrame(x0, room.y() + room.height() / 2, scale);
    pen.open("picture");
    SectionView.draw(pen, state.workpiece(), frame, HatchKind.FINE_SECTION);
    OutsideView.draw(pen, state.workpiece().shadow(), frame);
    SectionView.hatch(pen, state.removed(), frame, HatchKind.REMOVED);
    pen.path("edge-of-removed", SectionView.outline(state.removed(), frame));
    if (state.hold() == Hold.IN_BAR) {
      breakLine(pen, state.workpiece(), frame);
    }
    pen.line(
        "long-dash-dot", frame.x(fromZMm) - 4, frame.axisY(), frame.x(toZMm) + 4, frame.axisY());
    pen.close();
  }

  /** Where the bar goes on: its end is covered by a thin free-hand line. */
  private static void breakLine(SvgPen pen, HalfSection workpiece, ViewFrame frame) {
    double x = frame.x(workpiece.toZMm());
    double rMm =
        workpiece.spansAtZ(workpiece.toZMm() - 0.01).stream()
            .mapToDouble(span -> span.toMm())
            .max()
            .orElse(0);
    double half = rMm * frame.scale();
    double out = BREAK_MM * frame.scale();
    Box cover = new Box(x - 0.9, frame.axisY() - half - 1, out + 2, 2 * half + 2);
    pen.rect("plate", cover);
    SvgPath wave = new SvgPath().move(x - 0.9, frame.axisY() - half);
    wave.curve(x - 0.9 + out, frame.axisY() - half / 2, x - 0.9, frame.axisY());
    wave.curve(x - 0.9 - out, frame.axisY() + half / 2, x - 0.9, frame.axisY() + half);
    pen.path("thin", wave);
  }
}
