package drumline.drawing.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A text made to fit a room: in one line or two, as large as the room allows.
 *
 * @param lines one or two lines
 * @param size type size
 */
public record TextFit(List<String> lines, double size) {

  /** Distance of baselines over type size. */
  public static final double LINE_RATIO = 1.18;

  private static final double STEP = 0.5;

  /** Copies the list. */
  public TextFit {
    lines = List.copyOf(lines);
  }

  /** The largest fit between two type sizes, or empty where even the smallest overflows. */
  public static Optional<TextFit> find(
      String text, double width, double height, double largest, double smallest) {
    for (double size = largest; size >= smallest - 1e-9; size -= STEP) {
      if (size * 1.05 <= height && TextWidth.of(text, size) <= width) {
        return Optional.of(new TextFit(List.of(text), size));
      }
      if (size * (1.05 + LINE_RATIO) <= height) {
        List<String> two = twoLines(text);
        if (two.size() == 2 && widest(two) * size <= width) {
          return Optional.of(new TextFit(two, size));
        }
      }
    }
    return Optional.empty();
  }

  /** Height of the block of lines. */
  public double height() {
    return size * (1.05 + LINE_RATIO * (lines.size() - 1));
  }

  private static double widest(List<String> lines) {
    return lines.stream().mapToDouble(line -> TextWidth.of(line, 1)).max().orElse(0);
  }

  /** Broken at the space that makes the longer line shortest; one line where there is no space. */
  private static List<String> twoLines(String text) {
    List<String> best = List.of(text);
    double bestWidth = Double.POSITIVE_INFINITY;
    for (int at = text.indexOf(' '); at >= 0; at = text.indexOf(' ', at + 1)) {
      List<String> two = new ArrayList<>(List.of(text.substring(0, at), text.substring(at + 1)));
      if (widest(two) < bestWidth) {
        bestWidth = widest(two);
        best = two;
      }
    }
    return best;
  }
}
