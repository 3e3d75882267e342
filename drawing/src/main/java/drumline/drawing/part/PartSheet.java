package drumline.drawing.part;

import drumline.drawing.DrawingUnits;
import drumline.drawing.svg.Look;
import java.util.Set;

/**
 * How a piece is to be drawn.
 *
 * @param units units of the dimensions
 * @param look where the drawing will be seen
 * @param marked ids of elements and features to be shown in the accent colour
 */
public record PartSheet(DrawingUnits units, Look look, Set<String> marked) {

  /** Copies the set. */
  public PartSheet {
    marked = Set.copyOf(marked);
  }

  /** For a page, nothing marked. */
  public static PartSheet screen(DrawingUnits units) {
    return new PartSheet(units, Look.SCREEN, Set.of());
  }

  /** The same with elements marked. */
  public PartSheet withMarked(Set<String> elements) {
    return new PartSheet(units, look, elements);
  }
}
