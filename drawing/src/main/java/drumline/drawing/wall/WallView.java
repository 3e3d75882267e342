package drumline.drawing.wall;

import drumline.drawing.svg.Look;
import java.util.Set;

/**
 * How a cycle wall is to be drawn.
 *
 * @param look where it will be seen
 * @param widthPx width of the sheet in pixels, at least 640
 * @param timePx height in pixels of the longest time on the wall, at least 200
 * @param wrong ids of operations that break a rule, shown in the accent colour
 */
public record WallView(Look look, double widthPx, double timePx, Set<String> wrong) {

  /**
   * Copies the set.
   *
   * @throws IllegalArgumentException if the width is below 640 or the height below 200
   */
  public WallView {
    if (!(widthPx >= 640)) {
      throw new IllegalArgumentException("widthPx: " + widthPx + ", allowed: at least 640");
    }
    if (!(timePx >= 200)) {
      throw new IllegalArgumentException("timePx: " + timePx + ", allowed: at least 200");
    }
    wrong = Set.copyOf(wrong);
  }

  /** For a page 1240 pixels wide, nothing wrong. */
  public static WallView screen() {
    return new WallView(Look.SCREEN, 1240, 520, Set.of());
  }

  /** For paper in landscape, nothing wrong. */
  public static WallView paper() {
    return new WallView(Look.PAPER, 1240, 520, Set.of());
  }
}
