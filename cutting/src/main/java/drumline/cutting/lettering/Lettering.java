package drumline.cutting.lettering;

import drumline.cutting.livetool.ContourPass;
import drumline.cutting.validity.Require;
import java.util.List;
import java.util.stream.Stream;

/**
 * A text as strokes in millimetres, ready to be engraved or drawn.
 *
 * <p>way = Σ √(Δx² + Δy²) within strokes; jumps between strokes are counted as lifts.
 *
 * <p>Source: geometry.
 *
 * @param strokes strokes in cutting order, each of two points or more; x to the right, y up
 */
public record Lettering(List<List<Point>> strokes) {
  /** A point of a stroke. */
  public record Point(double xMm, double yMm) {}

  /**
   * @throws IllegalArgumentException if there is no stroke or a stroke has less than two points
   */
  public Lettering {
    strokes = strokes.stream().map(List::copyOf).toList();
    Require.atLeast("number of strokes", strokes.size(), 1);
    for (List<Point> stroke : strokes) {
      Require.atLeast("points of a stroke", stroke.size(), 2);
    }
  }

  /** Way in cut. */
  public double wayMm() {
    return strokes.stream().mapToDouble(Lettering::strokeMm).sum();
  }

  /** Strokes between which the tool lifts. */
  public int strokesCount() {
    return strokes.size();
  }

  /** Width from the leftmost to the rightmost point. */
  public double widthMm() {
    double left = points().mapToDouble(Point::xMm).min().orElseThrow();
    double right = points().mapToDouble(Point::xMm).max().orElseThrow();
    return right - left;
  }

  /**
   * The engraving as a path for a live tool.
   *
   * @param plungeS time to plunge, lift and jump, for each stroke, 0 or more
   * @param holdS time to orient, clamp and unclamp the spindle, 0 or more
   */
  public ContourPass pass(double plungeS, double holdS) {
    return new ContourPass(wayMm(), strokesCount(), plungeS, holdS);
  }

  private Stream<Point> points() {
    return strokes.stream().flatMap(List::stream);
  }

  private static double strokeMm(List<Point> stroke) {
    double way = 0;
    for (int i = 1; i < stroke.size(); i++) {
      Point a = stroke.get(i - 1);
      Point b = stroke.get(i);
      way += Math.hypot(b.xMm() - a.xMm(), b.yMm() - a.yMm());
    }
    return way;
  }
}
