package drumline.drawing.strip;

import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.Look;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.SvgSheet;
import drumline.drawing.view.WorkpiecePicture;
import drumline.shape.section.HalfSection;
import drumline.shape.workpiece.PositionState;
import drumline.shape.workpiece.PositionState.Hold;
import drumline.shape.workpiece.WorkpieceStates;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The workpiece after each position in a row, from the bar to the piece, all to one scale. */
public final class FilmStrip {

  private static final double WIDTH = 1240;
  private static final double LEAST_FRAME = 150;
  private static final double GAP = 10;
  private static final double CAPTION = 34;

  private FilmStrip() {}

  /** The strip for a page. */
  public static String svg(String pieceName, WorkpieceStates states) {
    return svg(pieceName, states, Look.SCREEN);
  }

  /** The strip; it breaks into rows where frames would become too narrow. */
  public static String svg(String pieceName, WorkpieceStates states, Look look) {
    List<PositionState> frames = new ArrayList<>();
    frames.add(new PositionState(0, states.bar(), HalfSection.EMPTY, List.of(), Hold.IN_BAR));
    frames.addAll(states.positions());
    int most = (int) ((WIDTH + GAP) / (LEAST_FRAME + GAP));
    int rows = (frames.size() + most - 1) / most;
    int perRow = (frames.size() + rows - 1) / rows;
    double frameWidth = (WIDTH - GAP * (perRow + 1)) / perRow;
    double scale = WorkpiecePicture.scale(frames, frameWidth - 16, frameWidth * 0.7);
    double pictureHeight = 2 * states.bar().outerRMm() * scale + 16;
    double rowHeight = pictureHeight + CAPTION + GAP;
    SvgPen pen = new SvgPen();
    for (int i = 0; i < frames.size(); i++) {
      double x = GAP + (i % perRow) * (frameWidth + GAP);
      int row = i / perRow;
      Box room = new Box(x, GAP + row * rowHeight, frameWidth, pictureHeight);
      frame(pen, frames.get(i), name(frames, i), room, scale, states.bar());
    }
    String description =
        "Half-sections of the workpiece, from the bar through "
            + states.positions().size()
            + " positions; what was removed last is hatched in the accent colour.";
    return new SvgSheet(
            "strip",
            "From bar to piece: " + pieceName,
            description,
            WIDTH,
            GAP + rows * rowHeight,
            SvgSheet.Unit.PX,
            look)
        .svg(pen);
  }

  private static void frame(
      SvgPen pen, PositionState state, String name, Box room, double scale, HalfSection bar) {
    pen.open("film", "data-position", String.valueOf(state.position()));
    pen.rect("frame", room);
    WorkpiecePicture.draw(pen, state, room, scale, bar.fromZMm(), bar.toZMm());
    pen.text("bold", room.x(), room.bottom() + 15, 12, Anchor.START, name);
    pen.text("soft", room.x(), room.bottom() + 29, 10.5, Anchor.START, removed(state));
    pen.close();
  }

  private static String name(List<PositionState> frames, int i) {
    if (i == 0) {
      return "bar";
    }
    return frames.get(i - 1).hold() == Hold.PARTED
        ? "after back-working"
        : "after position " + frames.get(i).position();
  }

  private static String removed(PositionState state) {
    double mm3 = state.removed().volumeMm3();
    if (state.position() == 0) {
      return "as fed to the stop";
    }
    return mm3 == 0
        ? "section unchanged"
        : String.format(Locale.ROOT, "%.2f cm³ removed", mm3 / 1000);
  }
}
