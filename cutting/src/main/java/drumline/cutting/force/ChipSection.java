package drumline.cutting.force;

import drumline.cutting.validity.Require;

/**
 * The section of the chip before it is cut, by depth, feed and edge angle.
 *
 * <p>h = f·sin κ (thickness, mm), b = ap/sin κ (width, mm), A = ap·f = b·h (mm²).
 *
 * <p>Source: [TSCH] Dietrich and Tschätsch, Praxis der Zerspantechnik, 11th edition, chip section.
 * The nose radius is left out, so the thickness is too high when the depth is less than the radius.
 *
 * @param depthMm depth of cut ap, square to the feed, above 0
 * @param feedMmPerRev feed f per revolution (or per tooth), above 0
 * @param edgeAngleDeg angle κ between cutting edge and feed, above 0 and below 180
 */
public record ChipSection(double depthMm, double feedMmPerRev, double edgeAngleDeg) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public ChipSection {
    Require.positive("depthMm", depthMm);
    Require.positive("feedMmPerRev", feedMmPerRev);
    Require.inside("edgeAngleDeg", edgeAngleDeg, 0, 180);
  }

  /** Thickness h of the chip. */
  public double thicknessMm() {
    return feedMmPerRev * Math.sin(Math.toRadians(edgeAngleDeg));
  }

  /** Width b of the chip. */
  public double widthMm() {
    return depthMm / Math.sin(Math.toRadians(edgeAngleDeg));
  }

  /** Area A of the chip. */
  public double areaMm2() {
    return depthMm * feedMmPerRev;
  }
}
