package drumline.drawing.view;

import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.SvgNumber;
import drumline.drawing.svg.SvgPen;

/**
 * Scale of a drawing and the bar that shows it.
 *
 * <p>Source: [ISO-5455] 1:2, 1:1, 2:1, 5:1, 10:1 (from memory); deviation: 1.5:1, 2.5:1, 3:1 and
 * 4:1 stand between them so that a piece fills its sheet.
 *
 * @param ratio length on paper over length of the piece
 */
public record DrawingScale(double ratio) {

  private static final double[] RATIOS = {10, 5, 4, 3, 2.5, 2, 1.5, 1, 0.5, 0.2};
  private static final double BAR_PAPER_MM = 32;
  private static final double[] BAR_STEPS_MM = {50, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05};

  /** The greatest scale at which a piece fits, or the least there is. */
  public static DrawingScale of(
      double lengthMm, double heightMm, double roomLengthMm, double roomHeightMm) {
    for (double ratio : RATIOS) {
      if (lengthMm * ratio <= roomLengthMm && heightMm * ratio <= roomHeightMm) {
        return new DrawingScale(ratio);
      }
    }
    return new DrawingScale(RATIOS[RATIOS.length - 1]);
  }

  /** As a title block says it. */
  public String words() {
    return ratio >= 1 ? SvgNumber.text(ratio) + ":1" : "1:" + SvgNumber.text(1 / ratio);
  }

  /** Draws the bar with its right end at a place on the sheet. */
  public void draw(SvgPen pen, double rightX, double y, double mmPerUnit, String unit) {
    double step = BAR_STEPS_MM[BAR_STEPS_MM.length - 1];
    for (double candidate : BAR_STEPS_MM) {
      if (candidate * mmPerUnit * ratio * 2 <= BAR_PAPER_MM) {
        step = candidate;
        break;
      }
    }
    double paper = step * mmPerUnit * ratio;
    double left = rightX - 2 * paper;
    pen.open("scale-bar");
    pen.line("wide", left, y, rightX, y);
    for (int i = 0; i <= 2; i++) {
      double x = left + i * paper;
      pen.line("thin", x, y - 1.4, x, y);
      String words = SvgNumber.text(step * i) + (i == 2 ? " " + unit : "");
      pen.text("soft", x, y - 2.1, 2.2, Anchor.MIDDLE, words);
    }
    pen.text("bold", left - 6, y, 3.5, Anchor.END, words());
    pen.close();
  }
}
