package drumline.drawing.strip;

import drumline.drawing.svg.Box;
import drumline.drawing.svg.Look;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.SvgSheet;
import drumline.drawing.view.WorkpiecePicture;
import drumline.shape.section.HalfSection;
import drumline.shape.workpiece.PositionState;
import drumline.shape.workpiece.PositionState.Hold;
import java.util.List;
import java.util.Locale;

/** Small half-sections for a page: the workpiece as it leaves a position, or the piece alone. */
public final class WorkpieceHeads {
  private static final double WIDTH = 150;
  private static final double HEIGHT = 92;
  private static final double MARGIN = 5;

  private final double scale;
  private final double fromZMm;
  private final double toZMm;

  /**
   * Heads of workpieces that are cut from this stretch of bar, all to one scale.
   *
   * @param bar holds all that is drawn
   */
  public WorkpieceHeads(HalfSection bar) {
    fromZMm = bar.fromZMm();
    toZMm = bar.toZMm();
    PositionState whole = new PositionState(1, bar, HalfSection.EMPTY, List.of(), Hold.IN_BAR);
    scale = WorkpiecePicture.scale(List.of(whole), WIDTH - 2 * MARGIN, HEIGHT - 2 * MARGIN);
  }

  /** The piece alone, as a small picture. */
  public static String piece(String name, HalfSection piece) {
    PositionState state = new PositionState(1, piece, HalfSection.EMPTY, List.of(), Hold.PARTED);
    return new WorkpieceHeads(piece).sheet(state, name, "Half-section of the finished piece.");
  }

  /** The workpiece as it leaves a position. */
  public String svg(PositionState state) {
    String words =
        String.format(
            Locale.ROOT,
            "Half-section of the workpiece; %.2f cm\u00b3 just removed are hatched in the accent"
                + " colour.",
            state.removed().volumeMm3() / 1000);
    return sheet(state, "Workpiece after position " + state.position(), words);
  }

  private String sheet(PositionState state, String title, String words) {
    SvgPen pen = new SvgPen();
    Box room = new Box(MARGIN, MARGIN, WIDTH - 2 * MARGIN, HEIGHT - 2 * MARGIN);
    WorkpiecePicture.draw(pen, state, room, scale, fromZMm, toZMm);
    return new SvgSheet("head", title, words, WIDTH, HEIGHT, SvgSheet.Unit.PX, Look.INSIDE)
        .svg(pen);
  }
}
