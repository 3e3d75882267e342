package drumline.drawing.tooling;

import drumline.drawing.svg.Box;
import drumline.drawing.svg.SvgPath;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts outlines off at the sides of a room.
 *
 * <p>Source: [SUTHERLAND-HODGMAN] for areas, one side after the other; lines by their parameters at
 * the sides.
 */
record BoxClip(Box room) {

  /** A corner on the sheet. */
  record Corner(double x, double y) {}

  /** What of an area lies in the room; empty where nothing does. */
  List<Corner> area(List<Corner> outline) {
    List<Corner> now = outline;
    for (int side = 0; side < 4 && !now.isEmpty(); side++) {
      now = cut(now, side);
    }
    return now;
  }

  private List<Corner> cut(List<Corner> outline, int side) {
    List<Corner> kept = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      Corner from = outline.get(i);
      Corner to = outline.get((i + 1) % outline.size());
      double a = inside(from, side);
      double b = inside(to, side);
      if (a >= 0) {
        kept.add(from);
      }
      if (a >= 0 != b >= 0) {
        kept.add(between(from, to, a / (a - b)));
      }
    }
    return kept;
  }

  /** Distance inwards from a side: left, right, top, bottom. */
  private double inside(Corner corner, int side) {
    return switch (side) {
      case 0 -> corner.x - room.x();
      case 1 -> room.right() - corner.x;
      case 2 -> corner.y - room.y();
      default -> room.bottom() - corner.y;
    };
  }

  /** Sides of an outline as far as they lie in the room. */
  SvgPath lines(List<Corner> outline) {
    SvgPath path = new SvgPath();
    for (int i = 0; i < outline.size(); i++) {
      line(path, outline.get(i), outline.get((i + 1) % outline.size()));
    }
    return path;
  }

  /** A straight line as far as it lies in the room. */
  void line(SvgPath path, Corner from, Corner to) {
    double begin = 0;
    double end = 1;
    for (int side = 0; side < 4; side++) {
      double a = inside(from, side);
      double b = inside(to, side);
      if (a < 0 && b < 0) {
        return;
      }
      if (a < 0) {
        begin = Math.max(begin, a / (a - b));
      } else if (b < 0) {
        end = Math.min(end, a / (a - b));
      }
    }
    if (end > begin) {
      Corner first = between(from, to, begin);
      Corner last = between(from, to, end);
      path.move(first.x, first.y).line(last.x, last.y);
    }
  }

  private static Corner between(Corner from, Corner to, double share) {
    return new Corner(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
  }
}
