package drumline.shape.proof;

import drumline.shape.section.HalfSection;
import java.util.Locale;

/**
 * A place where the route's piece is not the print's.
 *
 * @param kind too much or too little
 * @param surface surface of the piece that it lies on
 * @param element id of the nearest step of the print, or empty
 * @param region the place in the half-section
 * @param thicknessMm diameter of the greatest circle that fits into it
 */
public record Finding(
    Kind kind, Surface surface, String element, HalfSection region, double thicknessMm) {

  /** Too much or too little material. */
  public enum Kind {
    /** Material stands that the print does not have. */
    LEFT_ON("left on"),
    /** Material is gone that the print has. */
    GOUGED("gouged");

    private final String words;

    Kind(String words) {
      this.words = words;
    }
  }

  /** Surfaces of the piece. */
  public enum Surface {
    /** Outside. */
    OUTSIDE("outside"),
    /** Bore wall or bottom, inside and face grooves. */
    INSIDE("inside"),
    /** Before the front face. */
    FRONT_FACE("front face"),
    /** Behind the cut-off face. */
    BACK_FACE("cut-off face");

    private final String words;

    Surface(String words) {
      this.words = words;
    }
  }

  /** Area in the half-section in mm². */
  public double areaMm2() {
    return region.areaMm2();
  }

  /** Volume in mm³. */
  public double volumeMm3() {
    return region.volumeMm3();
  }

  /** As a setter would say it. */
  public String words() {
    String at = element.isEmpty() ? "" : " at " + element;
    return String.format(
        Locale.ROOT,
        "%.3f mm %s, %s%s: z %.2f to %.2f mm, Ø%.2f to Ø%.2f mm, %.2f mm² of the section",
        thicknessMm,
        kind.words,
        surface.words,
        at,
        region.fromZMm(),
        region.toZMm(),
        2 * region.innerRMm(),
        2 * region.outerRMm(),
        areaMm2());
  }
}
