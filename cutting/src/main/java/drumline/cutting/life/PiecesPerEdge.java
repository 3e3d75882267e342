package drumline.cutting.life;

import drumline.cutting.validity.Require;

/**
 * Pieces that one edge, drill or form tool makes before it is changed.
 *
 * <p>N = 60·T/tc, whole pieces only.
 *
 * <p>Source: definition; T is cutting time, so idle time does not count.
 */
public final class PiecesPerEdge {
  private PiecesPerEdge() {}

  /**
   * Whole pieces.
   *
   * @param lifeMin tool life T, above 0
   * @param cutS time in cut tc for each piece, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static long wholeCount(double lifeMin, double cutS) {
    return (long) Math.floor(meanCount(lifeMin, cutS) * (1 + 1e-12));
  }

  /**
   * Pieces on the average, not rounded, for costs.
   *
   * @param lifeMin tool life T, above 0
   * @param cutS time in cut tc for each piece, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static double meanCount(double lifeMin, double cutS) {
    Require.positive("lifeMin", lifeMin);
    Require.positive("cutS", cutS);
    return 60 * lifeMin / cutS;
  }
}
