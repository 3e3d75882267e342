package drumline.drawing.tooling;

import drumline.drawing.svg.Anchor;
import drumline.drawing.svg.Box;
import drumline.drawing.svg.SvgPen;
import drumline.drawing.svg.TextWidth;
import drumline.drawing.tooling.BoxClip.Corner;
import drumline.drawing.view.Spread;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Numbers in a row beside the tools, each with a line to its tool that ends in a dot. */
final class Balloons {

  private static final double SIZE = 3.2;
  private static final double HEIGHT = 5.2;
  private static final double ROOM = 11;

  /** A number and the place that it points to. */
  record Balloon(String number, Corner at) {}

  private final List<Balloon> balloons = new ArrayList<>();

  void add(String number, Corner at) {
    balloons.add(new Balloon(number, at));
  }

  /** Numbers side by side at a height. */
  void row(SvgPen pen, Box room, double y) {
    balloons.sort(Comparator.comparingDouble(balloon -> balloon.at.x()));
    double[] wished = balloons.stream().mapToDouble(balloon -> balloon.at.x()).toArray();
    double[] places = within(Spread.apply(wished, ROOM), room.x() + 5, room.right() - 5, ROOM);
    for (int i = 0; i < balloons.size(); i++) {
      draw(pen, balloons.get(i), places[i], y);
    }
  }

  /** Numbers one above the other at a distance from the left. */
  void column(SvgPen pen, Box room, double x) {
    balloons.sort(Comparator.comparingDouble(balloon -> balloon.at.y()));
    double step = HEIGHT + 2;
    double[] wished = balloons.stream().mapToDouble(balloon -> balloon.at.y() + 10).toArray();
    double[] places = within(Spread.apply(wished, step), room.y() + 12, room.bottom() - 4, step);
    for (int i = 0; i < balloons.size(); i++) {
      draw(pen, balloons.get(i), x, places[i]);
    }
  }

  private static double[] within(double[] places, double from, double to, double step) {
    double[] moved = places.clone();
    int last = moved.length - 1;
    for (int i = last; i >= 0; i--) {
      moved[i] = Math.min(moved[i], to - (last - i) * step);
    }
    for (int i = 0; i <= last; i++) {
      moved[i] = Math.max(moved[i], from + i * step);
    }
    return moved;
  }

  private static void draw(SvgPen pen, Balloon balloon, double x, double y) {
    double width = TextWidth.bold(balloon.number, SIZE) + 2.8;
    Box box = new Box(x - width / 2, y - HEIGHT / 2, width, HEIGHT);
    pen.line("thin", x, y, balloon.at.x(), balloon.at.y());
    pen.circle("arrow", balloon.at.x(), balloon.at.y(), 0.5);
    pen.rect("balloon", box, "rx", "2.6");
    pen.text("bold", x, y + SIZE * 0.36, SIZE, Anchor.MIDDLE, balloon.number);
  }
}
