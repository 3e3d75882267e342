package drumline.drawing.cost;

import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Look;
import drumline.drawing.svg.SvgPath;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.SvgSheet;
import java.util.List;
import java.util.Locale;

/** Cost of a good piece against the cycle, the cheapest cycle marked. */
public final class CycleCostCurve {
  private static final double WIDTH = 560;
  private static final double HEIGHT = 250;
  private static final double LEFT = 70;
  private static final double RIGHT = 30;
  private static final double TOP = 30;
  private static final double BOTTOM = 46;
  private static final double TEXT = 12;

  private CycleCostCurve() {}

  /**
   * A cycle with its cost.
   *
   * @param cycleS time from index to index, above 0
   * @param costPerPiece cost of a good piece in the study's currency, for drawing only
   */
  public record Point(double cycleS, double costPerPiece) {}

  /**
   * The curve.
   *
   * @param points at least one, cycles rising
   * @param currency ISO 4217 code
   * @throws IllegalArgumentException if there are no points
   */
  public static String svg(List<Point> points, String currency, Look look) {
    if (points.isEmpty()) {
      throw new IllegalArgumentException("points is empty, allowed: one or more");
    }
    Frame frame = Frame.of(points);
    SvgPen pen = new SvgPen();
    frame.draw(pen, currency);
    SvgPath curve = new SvgPath();
    for (int i = 0; i < points.size(); i++) {
      double x = frame.x(points.get(i).cycleS());
      double y = frame.y(points.get(i).costPerPiece());
      if (i == 0) {
        curve.move(x, y);
      } else {
        curve.line(x, y);
      }
    }
    pen.open("picture").path("wide", curve);
    Point cheapest = points.get(0);
    for (Point point : points) {
      pen.circle("arrow", frame.x(point.cycleS()), frame.y(point.costPerPiece()), 2.4);
      cheapest = point.costPerPiece() < cheapest.costPerPiece() ? point : cheapest;
    }
    pen.close();
    mark(pen, frame, cheapest);
    String title =
        String.format(
            Locale.ROOT,
            "Cheapest at a cycle of %.2f s: %.3f %s",
            cheapest.cycleS(),
            cheapest.costPerPiece(),
            currency);
    return new SvgSheet("cycle-cost", title, title, WIDTH, HEIGHT, SvgSheet.Unit.PX, look).svg(pen);
  }

  private static void mark(SvgPen pen, Frame frame, Point cheapest) {
    double x = frame.x(cheapest.cycleS());
    double y = frame.y(cheapest.costPerPiece());
    boolean atRight = x > WIDTH * 0.6;
    pen.open("picture marked").line("wide", x, y, x, HEIGHT - BOTTOM);
    pen.circle("arrow", x, y, 4);
    pen.text(
        "bold accent-text",
        x + (atRight ? -8 : 8),
        HEIGHT - BOTTOM - 8,
        TEXT,
        atRight ? Anchor.END : Anchor.START,
        String.format(Locale.ROOT, "%.2f s: %.3f", cheapest.cycleS(), cheapest.costPerPiece()));
    pen.close();
  }

  /** Axes from the least to the greatest of both figures. */
  private record Frame(double fromS, double toS, double leastPerPiece, double mostPerPiece) {
    static Frame of(List<Point> points) {
      double least = points.stream().mapToDouble(Point::costPerPiece).min().orElse(0);
      double most = points.stream().mapToDouble(Point::costPerPiece).max().orElse(1);
      double room = Math.max(0.002, (most - least) * 0.15);
      double fromS = points.get(0).cycleS();
      double toS = points.get(points.size() - 1).cycleS();
      return new Frame(fromS, Math.max(toS, fromS + 0.1), least - room, most + room);
    }

    double x(double cycleS) {
      return LEFT + (WIDTH - LEFT - RIGHT) * (cycleS - fromS) / (toS - fromS);
    }

    double y(double costPerPiece) {
      return HEIGHT
          - BOTTOM
          - (HEIGHT - TOP - BOTTOM)
              * (costPerPiece - leastPerPiece)
              / (mostPerPiece - leastPerPiece);
    }

    void draw(SvgPen pen, String currency) {
      pen.line("rule", LEFT, TOP, LEFT, HEIGHT - BOTTOM);
      pen.line("rule", LEFT, HEIGHT - BOTTOM, WIDTH - RIGHT, HEIGHT - BOTTOM);
      pen.text("soft", LEFT, TOP - 12, TEXT, Anchor.START, currency + " for a good piece");
      pen.text("soft", WIDTH - RIGHT, HEIGHT - 8, TEXT, Anchor.END, "cycle, s");
      for (int i = 0; i <= 4; i++) {
        double cost = leastPerPiece + (mostPerPiece - leastPerPiece) * i / 4;
        double cycleS = fromS + (toS - fromS) * i / 4;
        pen.line("grid", LEFT, y(cost), WIDTH - RIGHT, y(cost));
        pen.text(
            "", LEFT - 6, y(cost) + 4, TEXT, Anchor.END, String.format(Locale.ROOT, "%.3f", cost));
        pen.text(
            "",
            x(cycleS),
            HEIGHT - BOTTOM + 16,
            TEXT,
            Anchor.MIDDLE,
            String.format(Locale.ROOT, "%.1f", cycleS));
      }
    }
  }
}
