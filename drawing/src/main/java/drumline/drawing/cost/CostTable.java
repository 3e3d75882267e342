package drumline.drawing.cost;

import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.SvgPen;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The table of shares: pattern, what for, amount, share in percent.
 *
 * @param shares shares in the order of the bar
 * @param currency ISO 4217 code
 * @param total sum of all shares
 */
record CostTable(List<Share> shares, String currency, BigDecimal total) {

  private static final double TEXT = 12;
  private static final int LEAST_DECIMALS = 2;
  private static final int MOST_DECIMALS = 4;

  /** An amount with as many decimals as the finest share needs, two to four. */
  String words(BigDecimal amount) {
    return number(amount) + " " + currency;
  }

  String line(Share share) {
    return share.label() + ": " + words(share.amount()) + ", " + percent(share.amount());
  }

  String sentence() {
    return shares.stream().map(this::line).collect(Collectors.joining("; "));
  }

  double draw(SvgPen pen, double x, double topY, double width, double row) {
    double right = x + width;
    double y = topY;
    pen.open("table");
    pen.text("soft", right - 90, y, TEXT - 1, Anchor.END, currency + " per piece");
    pen.text("soft", right, y, TEXT - 1, Anchor.END, "share");
    pen.line("rule", x, y + 6, right, y + 6);
    for (int i = 0; i < shares.size(); i++) {
      y += row;
      Box swatch = new Box(x, y - 10 + 4, 22, 12);
      pen.rect("share", swatch, "fill", SvgPen.fill(CostBars.pattern(i)));
      row(pen, "", x + 32, right, y + 4, shares.get(i).label(), shares.get(i).amount());
    }
    pen.line("rule", x, y + 10, right, y + 10);
    y += row + 4;
    row(pen, "bold", x + 32, right, y + 3, "cost of a piece", total);
    pen.close();
    return y + 8;
  }

  private void row(
      SvgPen pen,
      String classes,
      double x,
      double right,
      double y,
      String label,
      BigDecimal amount) {
    pen.text(classes, x, y, TEXT, Anchor.START, label);
    pen.text(classes, right - 90, y, TEXT, Anchor.END, number(amount));
    pen.text(classes, right, y, TEXT, Anchor.END, percent(amount));
  }

  private String number(BigDecimal amount) {
    int finest =
        shares.stream()
            .mapToInt(share -> share.amount().stripTrailingZeros().scale())
            .max()
            .orElse(LEAST_DECIMALS);
    int decimals = Math.max(LEAST_DECIMALS, Math.min(MOST_DECIMALS, finest));
    String text = amount.setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    return text.replace('-', '−');
  }

  private String percent(BigDecimal amount) {
    if (total.signum() == 0) {
      return "–";
    }
    BigDecimal share =
        amount.multiply(BigDecimal.valueOf(100)).divide(total, 1, RoundingMode.HALF_UP);
    return share.toPlainString().replace('-', '−') + " %";
  }
}
