package drumline.drawing.cost;

import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.HatchKind;
import drumline.drawing.svg.Look;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.SvgSheet;
import java.util.List;
import java.util.Locale;

/** What would shorten the cycle, as bars of seconds, the greatest first. */
public final class GainBars {
  private static final double WIDTH = 640;
  private static final double ROW = 26;
  private static final double TEXT = 12;
  private static final double LEFT = 380;
  private static final double RIGHT = 60;

  private GainBars() {}

  /**
   * One change.
   *
   * @param words the change
   * @param gainS seconds that it takes off the cycle, above 0
   */
  public record Gain(String words, double gainS) {}

  /**
   * The bars.
   *
   * @param gains at least one
   * @throws IllegalArgumentException if there are none
   */
  public static String svg(List<Gain> gains, Look look) {
    double most = gains.stream().mapToDouble(Gain::gainS).max().orElse(0);
    if (!(most > 0)) {
      throw new IllegalArgumentException("gains has none above 0, allowed: one or more");
    }
    SvgPen pen = new SvgPen();
    double y = 8;
    for (Gain gain : gains) {
      double width = (WIDTH - LEFT - RIGHT) * gain.gainS() / most;
      pen.text("", LEFT - 10, y + 14, TEXT, Anchor.END, gain.words());
      pen.rect("share", new Box(LEFT, y, width, ROW - 8), "fill", SvgPen.fill(HatchKind.RISING));
      pen.text(
          "bold",
          LEFT + width + 8,
          y + 14,
          TEXT,
          Anchor.START,
          String.format(Locale.ROOT, "%.2f s", gain.gainS()));
      y += ROW;
    }
    String title = "What would shorten the cycle most: " + gains.get(0).words();
    return new SvgSheet("gains", title, title, WIDTH, y + 4, SvgSheet.Unit.PX, look).svg(pen);
  }
}
