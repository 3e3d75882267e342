package drumline.shop.machine;

import java.util.List;

/**
 * A place around the drum.
 *
 * @param number 1 for the first that a piece meets
 * @param slides tool slides that work there
 */
public record Position(int number, List<ToolSlide> slides) {

  /** Copies the list. */
  public Position {
    slides = List.copyOf(slides);
  }
}
