package drumline.drawing.cost;

import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.HatchKind;
import drumline.drawing.svg.Look;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.SvgSheet;
import drumline.drawing.svg.TextWidth;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a piece costs as one bar of shares, above what it costs today, with its table.
 *
 * <p>Known limits: credits are drawn back from the end of the bar, the mark shows what is left;
 * patterns repeat after ten shares.
 */
public final class CostBars {

  private static final double WIDTH = 760;
  private static final double LEFT = 92;
  private static final double RIGHT = 96;
  private static final double BAR_HEIGHT = 30;
  private static final double BAR_GAP = 16;
  private static final double ROW = 19;
  private static final double TEXT = 12;
  private static final HatchKind[] PATTERNS = {
    HatchKind.RISING,
    HatchKind.DOTTED,
    HatchKind.LEVEL,
    HatchKind.CROSSED,
    HatchKind.FALLING,
    HatchKind.UPRIGHT,
    HatchKind.WAVED,
    HatchKind.GRID,
    HatchKind.SPARSE,
    HatchKind.SECTION
  };

  private CostBars() {}

  /** The bars for a page. */
  public static String svg(List<Share> shares, String currency, @Nullable BigDecimal today) {
    return svg(shares, currency, today, Look.SCREEN);
  }

  /**
   * The bars.
   *
   * @param shares shares of the study's cost, in the order of the bar
   * @param currency ISO 4217 code
   * @param today what a piece costs today, or null
   * @throws IllegalArgumentException if there are no shares or none is greater than 0
   */
  public static String svg(
      List<Share> shares, String currency, @Nullable BigDecimal today, Look look) {
    BigDecimal paid = sum(shares, 1);
    if (paid.signum() <= 0) {
      throw new IllegalArgumentException("shares: sum of costs " + paid + ", allowed: above 0");
    }
    BigDecimal total = paid.add(sum(shares, -1));
    double longest = Math.max(paid.doubleValue(), today == null ? 0 : today.doubleValue());
    double scale = (WIDTH - LEFT - RIGHT) / longest;
    CostTable money = new CostTable(shares, currency, total);
    SvgPen pen = new SvgPen();
    double y = 14;
    study(pen, shares, money, total, scale, y);
    y += BAR_HEIGHT + BAR_GAP;
    if (today != null) {
      today(pen, money, today, total, scale, y);
      y += BAR_HEIGHT + BAR_GAP;
    }
    y = money.draw(pen, LEFT, y + 8, WIDTH - LEFT - RIGHT, ROW);
    String title = "Cost of a piece: " + money.words(total);
    return new SvgSheet(
            "cost", title, description(money, today), WIDTH, y + 6, SvgSheet.Unit.PX, look)
        .svg(pen);
  }

  private static void study(
      SvgPen pen, List<Share> shares, CostTable money, BigDecimal total, double scale, double y) {
    pen.open("study");
    pen.text("bold", LEFT - 10, y + 19, TEXT, Anchor.END, "this study");
    double x = LEFT;
    for (int i = 0; i < shares.size(); i++) {
      double width = Math.abs(shares.get(i).amount().doubleValue()) * scale;
      boolean isCredit = shares.get(i).amount().signum() < 0;
      x -= isCredit ? width : 0;
      Box box =
          isCredit ? new Box(x, y + BAR_HEIGHT + 2, width, 6) : new Box(x, y, width, BAR_HEIGHT);
      pen.open("", "data-share", shares.get(i).label());
      pen.title(money.line(shares.get(i)));
      pen.rect("share", box, "fill", SvgPen.fill(pattern(i)));
      pen.close();
      x += isCredit ? 0 : width;
    }
    double end = LEFT + total.doubleValue() * scale;
    pen.line("cycle-line", end, y - 5, end, y + BAR_HEIGHT + 5);
    double labelX = LEFT + sum(shares, 1).doubleValue() * scale + 8;
    pen.text("bold", labelX, y + 20, TEXT + 1, Anchor.START, money.words(total));
    pen.close();
  }

  private static void today(
      SvgPen pen, CostTable money, BigDecimal today, BigDecimal total, double scale, double y) {
    double width = Math.max(0, today.doubleValue() * scale);
    pen.open("today");
    pen.text("", LEFT - 10, y + 19, TEXT, Anchor.END, "today");
    pen.rect("open-bar", new Box(LEFT, y, width, BAR_HEIGHT));
    pen.text("", LEFT + width + 8, y + 20, TEXT + 1, Anchor.START, money.words(today));
    String words = difference(money, today, total);
    if (TextWidth.of(words, TEXT) <= width - 16) {
      pen.text("soft", LEFT + 8, y + 19, TEXT, Anchor.START, words);
    }
    pen.close();
  }

  private static String difference(CostTable money, BigDecimal today, BigDecimal total) {
    BigDecimal difference = total.subtract(today);
    if (difference.signum() == 0) {
      return "the same";
    }
    String words = money.words(difference.abs());
    if (today.signum() > 0) {
      words +=
          " ("
              + difference
                  .abs()
                  .multiply(BigDecimal.valueOf(100))
                  .divide(today, 1, RoundingMode.HALF_UP)
              + " %)";
    }
    return "this study is " + words + (difference.signum() < 0 ? " less" : " more");
  }

  private static String description(CostTable money, @Nullable BigDecimal today) {
    return "Shares of the cost of a piece: "
        + money.sentence()
        + (today == null ? "" : "; today a piece costs " + money.words(today))
        + ".";
  }

  private static BigDecimal sum(List<Share> shares, int sign) {
    return shares.stream()
        .map(Share::amount)
        .filter(amount -> amount.signum() == sign)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  static HatchKind pattern(int i) {
    return PATTERNS[i % PATTERNS.length];
  }
}
