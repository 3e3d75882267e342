package drumline.cutting.livetool;

import drumline.cutting.validity.Require;

/**
 * Width of a flat on round stock, and the radius that a polygon needs.
 *
 * <p>w = 2·√(R² − d²), d the distance of the flat from the axis.
 *
 * <p>Source: geometry.
 */
public final class FlatWidth {
  private FlatWidth() {}

  /**
   * Width w of the flat.
   *
   * @param diameterMm diameter 2R of the stock, above 0
   * @param distanceMm distance d of the flat from the axis, 0 … R
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double widthMm(double diameterMm, double distanceMm) {
    Require.positive("diameterMm", diameterMm);
    Require.between("distanceMm", distanceMm, 0, diameterMm / 2);
    double radius = diameterMm / 2;
    return 2 * Math.sqrt(radius * radius - distanceMm * distanceMm);
  }

  /**
   * Width of one side of a sharp regular polygon: s·tan(180°/count).
   *
   * @param acrossFlatsMm distance s of opposite flats (twice the flat's distance), above 0
   * @param flatsCount flats, at least 3
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double polygonSideMm(double acrossFlatsMm, int flatsCount) {
    Require.positive("acrossFlatsMm", acrossFlatsMm);
    Require.atLeast("flatsCount", flatsCount, 3);
    return acrossFlatsMm * Math.tan(Math.PI / flatsCount);
  }
}
