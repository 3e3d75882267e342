package drumline.drawing.wall;

import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.TextWidth;
import drumline.drawing.view.WorkpiecePicture;
import drumline.drawing.wall.WallColumn.Rank;
import drumline.shape.section.HalfSection;
import drumline.shape.workpiece.PositionState;
import java.util.List;

/** The heads of the columns: number, workpiece as it leaves, names of the lanes. */
final class WallHeads {

  static final double NUMBER_HEIGHT = 20;
  static final double LANE_NAME_HEIGHT = 16;

  private WallHeads() {}

  static void draw(
      SvgPen pen,
      List<WallColumn> columns,
      List<PositionState> states,
      double topY,
      double pictureHeight) {
    double narrowest = columns.stream().mapToDouble(WallColumn::width).min().orElse(20) - 10;
    double scale = WorkpiecePicture.scale(states, narrowest, pictureHeight - 6);
    double fromZMm = states.stream().mapToDouble(s -> all(s).fromZMm()).min().orElse(0);
    double toZMm = states.stream().mapToDouble(s -> all(s).toZMm()).max().orElse(0);
    for (WallColumn column : columns) {
      boolean governs = column.rank() == Rank.GOVERNS;
      pen.open(governs ? "governs" : "follows");
      String classes = governs ? "bold accent-text" : "bold";
      pen.text(classes, column.x(), topY + 14, 15, Anchor.START, column.name());
      if (governs && column.width() > 90) {
        double beside = column.x() + TextWidth.bold(column.name(), 15) + 7;
        pen.text("accent-text", beside, topY + 14, 10, Anchor.START, "sets the cycle");
      }
      Box room = new Box(column.x(), topY + NUMBER_HEIGHT, column.width(), pictureHeight);
      states.stream()
          .filter(state -> state.position() == column.timeline().position())
          .findFirst()
          .ifPresent(state -> WorkpiecePicture.draw(pen, state, room, scale, fromZMm, toZMm));
      double nameY = topY + NUMBER_HEIGHT + pictureHeight + LANE_NAME_HEIGHT - 5;
      laneNames(pen, column, nameY);
      pen.close();
    }
  }

  private static HalfSection all(PositionState state) {
    return state.workpiece().union(state.removed());
  }

  private static void laneNames(SvgPen pen, WallColumn column, double y) {
    for (WallLane lane : column.lanes()) {
      for (double size : new double[] {9.5, 8.5, 7.5}) {
        if (TextWidth.of(lane.words(), size) <= lane.width() - 2) {
          double middle = lane.x() + lane.width() / 2;
          pen.text("soft", middle, y, size, Anchor.MIDDLE, lane.words());
          break;
        }
      }
    }
  }
}
