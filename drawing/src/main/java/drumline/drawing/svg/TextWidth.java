package drumline.drawing.svg;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How wide a line of text is in the sans faces that the drawings ask for.
 *
 * <p>Source: advance widths measured from Liberation Sans, whose metrics are those of Arial; other
 * faces can differ by a seventh, so texts in tight places also carry their length.
 */
public final class TextWidth {

  private static final Map<Integer, double[]> WIDTHS = load();
  private static final double[] UNKNOWN = {0.7, 0.75};
  private static final double[] WIDE = {1.05, 1.05};
  private static final int FIRST_WIDE = 0x2E80;

  private TextWidth() {}

  /** Width of the text in the unit of the type size. */
  public static double of(String text, double size) {
    return size * sum(text, 0);
  }

  /** Width of the text in bold. */
  public static double bold(String text, double size) {
    return size * sum(text, 1);
  }

  private static double sum(String text, int column) {
    return text.codePoints().mapToDouble(c -> width(c)[column]).sum();
  }

  private static double[] width(int c) {
    return WIDTHS.getOrDefault(c, c >= FIRST_WIDE ? WIDE : UNKNOWN);
  }

  private static Map<Integer, double[]> load() {
    Map<Integer, double[]> widths = new HashMap<>();
    for (String line : lines("advance-widths.csv")) {
      if (!line.startsWith("#")) {
        List<String> cells = List.of(line.split(",", -1));
        double regular = Integer.parseInt(cells.get(1)) / 1000.0;
        double bold = Integer.parseInt(cells.get(2)) / 1000.0;
        widths.put(Integer.parseInt(cells.get(0), 16), new double[] {regular, bold});
      }
    }
    return widths;
  }

  static List<String> lines(String name) {
    try (InputStream in = TextWidth.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("resource " + name + " is not in the program");
      }
      InputStreamReader reader = new InputStreamReader(in, StandardCharsets.UTF_8);
      return new BufferedReader(reader).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
