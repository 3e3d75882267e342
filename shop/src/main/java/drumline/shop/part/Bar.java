package drumline.shop.part;

/**
 * The stock a piece is made from.
 *
 * @param shape cross-section
 * @param sizeMm diameter, or size across flats
 * @param boreMm bore of a tube, 0 for solid bar
 * @param toleranceClass class of the size, e.g. {@code h9} (EN 10278)
 * @param lengthMm length of one bar as bought
 */
public record Bar(
    Shape shape, double sizeMm, double boreMm, String toleranceClass, double lengthMm) {

  /** Cross-section of bar stock. */
  public enum Shape {
    /** Round, solid or tube. */
    ROUND,
    /** Hexagon. */
    HEXAGON,
    /** Square. */
    SQUARE
  }

  /** Size across corners in mm: sharp corners, without the rounding of drawn bar. */
  public double acrossCornersMm() {
    return switch (shape) {
      case ROUND -> sizeMm;
      case HEXAGON -> sizeMm * 2 / Math.sqrt(3);
      case SQUARE -> sizeMm * Math.sqrt(2);
    };
  }

  /** Area of the cross-section in mm². */
  public double areaMm2() {
    double outside =
        switch (shape) {
          case ROUND -> Math.PI * sizeMm * sizeMm / 4;
          case HEXAGON -> Math.sqrt(3) / 2 * sizeMm * sizeMm;
          case SQUARE -> sizeMm * sizeMm;
        };
    return outside - Math.PI * boreMm * boreMm / 4;
  }
}
