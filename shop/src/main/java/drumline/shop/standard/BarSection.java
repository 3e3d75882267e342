package drumline.shop.standard;

/** Cross-section of bar; its size is the diameter, or the distance across flats. */
public enum BarSection {
  /** Round bar. */
  ROUND(1),
  /** Hexagon bar; corners at flats/cos 30°. */
  HEXAGON(2 / Math.sqrt(3)),
  /** Square bar; corners at flats·√2. */
  SQUARE(Math.sqrt(2));

  private final double cornersRatio;

  BarSection(double cornersRatio) {
    this.cornersRatio = cornersRatio;
  }

  /**
   * Distance across sharp corners, which must pass the spindle bore: e = s·ratio.
   *
   * <p>Drawn bar has slightly rounded corners, so the real distance is a little less. Source:
   * geometry.
   *
   * @param sizeMm diameter or distance across flats s, above 0, mm
   * @throws IllegalArgumentException if sizeMm is not above 0 or is infinite
   */
  public double acrossCornersMm(double sizeMm) {
    return cornersRatio * requireSize(sizeMm);
  }

  /**
   * Cross-section area, mm²: π/4·d² round, √3/2·s² hexagon, s² square.
   *
   * @param sizeMm diameter d or distance across flats s, above 0, mm
   * @throws IllegalArgumentException if sizeMm is not above 0 or is infinite
   */
  public double areaMm2(double sizeMm) {
    double square = requireSize(sizeMm) * sizeMm;
    return switch (this) {
      case ROUND -> Math.PI / 4 * square;
      case HEXAGON -> Math.sqrt(3) / 2 * square;
      case SQUARE -> square;
    };
  }

  private static double requireSize(double sizeMm) {
    if (!(sizeMm > 0) || Double.isInfinite(sizeMm)) {
      throw new IllegalArgumentException("sizeMm is " + sizeMm + "; allowed: above 0");
    }
    return sizeMm;
  }
}
