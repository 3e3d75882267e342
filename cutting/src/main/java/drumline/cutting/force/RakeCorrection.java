package drumline.cutting.force;

import drumline.cutting.validity.Require;

/**
 * Less force with a keener rake.
 *
 * <p>Kγ = 1 − c·(γ − γ0)/100, c in per cent per degree, γ0 the rake at which the table was taken.
 *
 * <p>Source: [TSCH] Dietrich and Tschätsch, 11th edition: c = 1, γ0 = +6° steel, +2° cast iron, 0°
 * aluminium. A steeper c = 1.5 is from memory.
 */
public final class RakeCorrection {
  /** Reference rake of tables for steel. */
  public static final double STEEL_DEG = 6;

  /** Reference rake of tables for cast iron. */
  public static final double CAST_IRON_DEG = 2;

  /** Reference rake of tables for aluminium. */
  public static final double ALUMINIUM_DEG = 0;

  private RakeCorrection() {}

  /**
   * Factor Kγ with one per cent per degree.
   *
   * @param rakeDeg rake γ, −30 … +40
   * @param referenceDeg rake γ0 of the table, −30 … +40
   * @throws IllegalArgumentException if an angle is outside its range
   */
  public static double ratio(double rakeDeg, double referenceDeg) {
    return ratio(rakeDeg, referenceDeg, 1.0);
  }

  /**
   * Factor Kγ with a chosen steepness.
   *
   * @param rakeDeg rake γ, −30 … +40
   * @param referenceDeg rake γ0 of the table, −30 … +40
   * @param steepnessPct c, per cent for each degree, 0 … 1.5
   * @throws IllegalArgumentException if a value is outside its range, or the factor is not above 0
   */
  public static double ratio(double rakeDeg, double referenceDeg, double steepnessPct) {
    Require.between("rakeDeg", rakeDeg, -30, 40);
    Require.between("referenceDeg", referenceDeg, -30, 40);
    Require.between("steepnessPct", steepnessPct, 0, 1.5);
    double ratio = 1 - steepnessPct * (rakeDeg - referenceDeg) / 100;
    Require.positive("rake factor", ratio);
    return ratio;
  }
}
