package drumline.bench.route;

import java.util.List;
import java.util.Locale;

/** How gap and time grow with the number of operations, as a drawing with two panels. */
final class GrowthPicture {
  private static final int LEFT = 60;
  private static final int TOP = 40;
  private static final int WIDE = 260;
  private static final int HIGH = 180;
  private static final int SECOND = 380;
  private static final int MOST_OPERATIONS = 65;

  private GrowthPicture() {}

  /**
   * Medians of one size.
   *
   * @param operationCount operations
   * @param positionCount positions of the drum
   * @param gapPct median gap
   * @param tookS median time
   * @param greatestGapPct greatest gap
   */
  record Point(
      int operationCount, int positionCount, double gapPct, double tookS, double greatestGapPct) {}

  /** The drawing as a file's text. */
  static String svg(List<Point> points, int seedCount, double searchS) {
    double mostGap =
        Math.max(1, points.stream().mapToDouble(Point::greatestGapPct).max().orElse(1));
    double mostS = Math.max(1, points.stream().mapToDouble(Point::tookS).max().orElse(1));
    StringBuilder out = new StringBuilder();
    out.append(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 700 300\" width=\"700\""
            + " height=\"300\" font-family=\"sans-serif\" font-size=\"12\">\n"
            + "<rect width=\"700\" height=\"300\" fill=\"#ffffff\"/>\n");
    text(out, LEFT, 20, "median gap, % of the cycle (thin: greatest)");
    text(out, SECOND, 20, "median time, s");
    axes(out, LEFT, mostGap);
    axes(out, SECOND, mostS);
    for (int positions : new int[] {6, 8}) {
      List<Point> own = points.stream().filter(p -> p.positionCount() == positions).toList();
      String dash = positions == 6 ? "" : " stroke-dasharray=\"6 3\"";
      line(out, own.stream().map(p -> at(LEFT, p, p.gapPct() / mostGap)).toList(), 2.5, dash);
      line(
          out,
          own.stream().map(p -> at(LEFT, p, p.greatestGapPct() / mostGap)).toList(),
          0.8,
          dash);
      line(out, own.stream().map(p -> at(SECOND, p, p.tookS() / mostS)).toList(), 2.5, dash);
    }
    text(
        out,
        LEFT,
        290,
        String.format(
            Locale.ROOT,
            "operations across; solid: 6 positions, dashed: 8; %d seeds each, %.0f s effort, two workers",
            seedCount,
            searchS));
    return out.append("</svg>\n").toString();
  }

  private static String at(int left, Point point, double height) {
    return String.format(
        Locale.ROOT,
        "%.1f,%.1f",
        left + WIDE * point.operationCount() / (double) MOST_OPERATIONS,
        TOP + HIGH * (1 - height));
  }

  private static void line(StringBuilder out, List<String> points, double width, String dash) {
    out.append(
        String.format(
            Locale.ROOT,
            "<polyline points=\"%s\" fill=\"none\" stroke=\"#1d4f76\" stroke-width=\"%.1f\"%s/>%n",
            String.join(" ", points),
            width,
            dash));
  }

  private static void axes(StringBuilder out, int left, double most) {
    int bottom = TOP + HIGH;
    out.append(
        String.format(
            Locale.ROOT,
            "<path d=\"M%d %dV%dH%d\" fill=\"none\" stroke=\"#444444\"/>%n",
            left,
            TOP,
            bottom,
            left + WIDE));
    for (int operations = 20; operations <= 60; operations += 20) {
      int x = left + WIDE * operations / MOST_OPERATIONS;
      out.append(
          String.format(
              Locale.ROOT,
              "<path d=\"M%d %dv5\" stroke=\"#444444\"/><text x=\"%d\" y=\"%d\""
                  + " text-anchor=\"middle\">%d</text>%n",
              x,
              bottom,
              x,
              bottom + 20,
              operations));
    }
    for (int part = 0; part <= 2; part++) {
      int y = bottom - HIGH * part / 2;
      out.append(
          String.format(
              Locale.ROOT,
              "<path d=\"M%d %dh-5\" stroke=\"#444444\"/><text x=\"%d\" y=\"%d\""
                  + " text-anchor=\"end\">%.1f</text>%n",
              left,
              y,
              left - 8,
              y + 4,
              most * part / 2));
    }
  }

  private static void text(StringBuilder out, int x, int y, String words) {
    out.append(String.format(Locale.ROOT, "<text x=\"%d\" y=\"%d\">%s</text>%n", x, y, words));
  }
}
