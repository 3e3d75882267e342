package drumline.sheets.content.plain;

/**
 * A drawing as a self-contained SVG element.
 *
 * @param title heading over it
 * @param caption what it shows, in a sentence; also for those who cannot see it
 * @param room how much of a printed sheet it gets
 * @param svg the element, from {@code <svg} to {@code </svg>}; goes into the page as it is
 */
public record Picture(String title, String caption, Room room, String svg) {

  /** How much of a printed sheet a picture gets. */
  public enum Room {
    /** The width of the text. */
    COLUMN,
    /** A sheet of its own, long side level. */
    WHOLE_SHEET
  }

  /**
   * Checks that the text is one SVG element that brings nothing from outside and runs nothing.
   *
   * @throws IllegalArgumentException if it does not begin with {@code <svg}, does not end with
   *     {@code </svg>}, or holds a script, an event attribute or an outside address
   */
  public Picture {
    svg = SvgText.checked(svg);
  }
}
