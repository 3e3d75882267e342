package drumline.cutting.lettering;

import drumline.cutting.validity.Require;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Letters, figures and signs as straight strokes on a grid six units high.
 *
 * <p>way in mm = Σ √(Δx² + Δy²)·height/6 over all strokes of all characters.
 *
 * <p>Source: own drawing, resource strokes.csv; no standard's or maker's font.
 */
public final class StrokeFont {
  /** Height of the letters on the drawing grid. */
  private static final double GRID_HEIGHT = 6;

  private static final StrokeFont PLAIN = read("strokes.csv");

  private final Map<Character, Glyph> glyphs;

  /** A point on the grid: x to the right, y up, from the foot of the character. */
  private record GridPoint(double x, double y) {}

  /** A character: the step to the next one and its strokes. */
  private record Glyph(double advance, List<List<GridPoint>> strokes) {}

  private StrokeFont(Map<Character, Glyph> glyphs) {
    this.glyphs = Map.copyOf(glyphs);
  }

  /** The font that comes with the program: A–Z, 0–9, hyphen, full stop, slash and space. */
  public static StrokeFont plain() {
    return PLAIN;
  }

  /** Characters that can be engraved, in order, without the space. */
  public String characters() {
    StringBuilder all = new StringBuilder();
    new TreeSet<>(glyphs.keySet()).stream().filter(c -> c != ' ').forEach(all::append);
    return all.toString();
  }

  /**
   * A text in one line.
   *
   * @param text the text, in the font's characters, at least one of them not a space
   * @param heightMm height of capital letters, above 0
   * @throws IllegalArgumentException if the height is not above 0, a character is not in the font,
   *     or nothing is to be engraved
   */
  public Lettering line(String text, double heightMm) {
    Require.positive("heightMm", heightMm);
    double scaleMm = heightMm / GRID_HEIGHT;
    double x = 0;
    List<List<Lettering.Point>> strokes = new ArrayList<>();
    for (int i = 0; i < text.length(); i++) {
      Glyph glyph = glyphs.get(text.charAt(i));
      if (glyph == null) {
        throw new IllegalArgumentException(
            String.format(
                "text has '%s' at place %d; allowed is the space and %s.",
                text.charAt(i), i + 1, characters()));
      }
      for (List<GridPoint> stroke : glyph.strokes()) {
        strokes.add(placed(stroke, x, scaleMm));
      }
      x += glyph.advance();
    }
    return new Lettering(strokes);
  }

  private static List<Lettering.Point> placed(
      List<GridPoint> stroke, double startX, double scaleMm) {
    return stroke.stream()
        .map(p -> new Lettering.Point((startX + p.x()) * scaleMm, p.y() * scaleMm))
        .toList();
  }

  private static StrokeFont read(String name) {
    try (InputStream in = StrokeFont.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("The stroke font " + name + " is missing.");
      }
      Map<Character, Glyph> glyphs = new HashMap<>();
      new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
          .lines()
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .forEach(line -> addGlyph(glyphs, line));
      return new StrokeFont(glyphs);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One line: character, step, then strokes parted by '|', points by blanks, as x:y. */
  private static void addGlyph(Map<Character, Glyph> glyphs, String line) {
    String[] cells = line.split(",", 3);
    char character = cells[0].equals("space") ? ' ' : cells[0].charAt(0);
    List<List<GridPoint>> strokes = new ArrayList<>();
    for (String stroke : cells[2].split("\\|", -1)) {
      if (stroke.isBlank()) {
        continue;
      }
      List<GridPoint> points = new ArrayList<>();
      for (String point : stroke.trim().split(" ", -1)) {
        String[] halves = point.split(":", 2);
        points.add(new GridPoint(Double.parseDouble(halves[0]), Double.parseDouble(halves[1])));
      }
      strokes.add(List.copyOf(points));
    }
    glyphs.put(character, new Glyph(Double.parseDouble(cells[1]), List.copyOf(strokes)));
  }
}
