package drumline.drawing.part;

import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.SvgPath;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.TextWidth;
import drumline.drawing.view.Arrow;
import drumline.drawing.view.Spread;
import drumline.drawing.view.ViewFrame;
import java.util.List;

/**
 * Places the dimensions above the piece: each on its own stem, those at the left reading away to
 * the left, those at the right to the right, in rows such that no text stands on another's stem.
 */
final class FlagTower {

  static final double TEXT_MM = 2.5;
  private static final double ROW_MM = 4.7;
  private static final double STEM_ROOM_MM = 2.2;
  private static final double TEXT_ROOM_MM = 2;

  private final List<Flag> flags;
  private final double[] stemX;
  private final int[] rows;
  private final int split;

  FlagTower(List<Flag> flags, ViewFrame frame) {
    this.flags = flags;
    double[] wished = flags.stream().mapToDouble(flag -> frame.x(flag.zMm())).toArray();
    this.stemX = Spread.apply(wished, STEM_ROOM_MM);
    int best = 0;
    for (int at = 0; at <= flags.size(); at++) {
      if (cost(at) < cost(best)) {
        best = at;
      }
    }
    this.split = best;
    this.rows = rows(best);
  }

  /** Height of the tower above its foot. */
  double heightMm() {
    return flags.isEmpty() ? 0 : (highest(rows) + 1) * ROW_MM;
  }

  /** How far the texts reach to the left. */
  double leftMm() {
    double left = Double.POSITIVE_INFINITY;
    for (int i = 0; i < flags.size(); i++) {
      left = Math.min(left, i < split ? stemX[i] - width(i) : stemX[i]);
    }
    return left;
  }

  /** How far the texts reach to the right. */
  double rightMm() {
    double right = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < flags.size(); i++) {
      right = Math.max(right, i < split ? stemX[i] : stemX[i] + width(i));
    }
    return right;
  }

  /** Draws the tower with its lowest row at a height on the sheet. */
  void draw(SvgPen pen, ViewFrame frame, double footY, Marked marked) {
    for (int i = 0; i < flags.size(); i++) {
      Flag flag = flags.get(i);
      double y = footY - rows[i] * ROW_MM;
      double side = i < split ? -1 : 1;
      double tipX = frame.x(flag.zMm());
      double tipY = frame.up(flag.rMm());
      pen.open(marked.classes(flag.element()), "data-element", flag.element());
      SvgPath stem = new SvgPath().move(stemX[i] + side * width(i), y).line(stemX[i], y);
      stem.line(stemX[i], footY + 1.5).line(tipX, tipY);
      pen.path("thin", stem);
      Arrow.draw(pen, stemX[i], footY + 1.5, tipX, tipY);
      Anchor anchor = i < split ? Anchor.END : Anchor.START;
      pen.text("", stemX[i] + side * 0.7, y - 0.9, TEXT_MM, anchor, flag.text());
      pen.close();
    }
  }

  private double width(int i) {
    return TextWidth.of(flags.get(i).text(), TEXT_MM) + 0.7;
  }

  /** Rows used, and a little for how uneven the two sides are. */
  private double cost(int at) {
    return highest(rows(at)) + 0.01 * Math.abs(at - flags.size() / 2.0);
  }

  private int[] rows(int at) {
    int[] result = new int[flags.size()];
    for (int i = 0; i < at; i++) {
      result[i] = above(result, i, 0, i, stemX[i] - width(i) - TEXT_ROOM_MM, stemX[i]);
    }
    for (int i = flags.size() - 1; i >= at; i--) {
      double right = stemX[i] + width(i) + TEXT_ROOM_MM;
      result[i] = above(result, i, i + 1, flags.size(), stemX[i], right);
    }
    return result;
  }

  /** One row above all stems of the same side that its text would stand on. */
  private int above(int[] result, int i, int from, int to, double left, double right) {
    int row = 0;
    for (int other = from; other < to; other++) {
      if (other != i && stemX[other] > left && stemX[other] < right) {
        row = Math.max(row, result[other] + 1);
      }
    }
    return row;
  }

  private static int highest(int[] rows) {
    int highest = 0;
    for (int row : rows) {
      highest = Math.max(highest, row);
    }
    return highest;
  }
}
