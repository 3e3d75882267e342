package drumline.cutting.stiffness;

import drumline.cutting.validity.Require;

/**
 * Eccentricity that a balance grade allows, and the grade of an eccentric bar or chuck.
 *
 * <p>G = e·ω (mm/s); e = 1000·G/ω (µm); force m·e·ω² is {@code CentrifugalForce}.
 *
 * <p>Source: [ISO-21940-11] balance quality grades, relation from memory (G 2.5 and G 6.3 are usual
 * for machine tool spindles). Caution: an unbalanced or bent bar shakes the whole drum.
 */
public final class BalanceGrade {
  private BalanceGrade() {}

  /**
   * Eccentricity of the centre of mass that a grade allows at a speed.
   *
   * @param gradeMmPerS grade G, above 0
   * @param speedRevPerMin speed, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static double allowedUm(double gradeMmPerS, double speedRevPerMin) {
    Require.positive("gradeMmPerS", gradeMmPerS);
    Require.positive("speedRevPerMin", speedRevPerMin);
    return 1000 * gradeMmPerS / (Math.PI * speedRevPerMin / 30);
  }

  /**
   * Grade that an eccentricity makes at a speed.
   *
   * @param eccentricityUm eccentricity e, 0 or more
   * @param speedRevPerMin speed, 0 or more
   * @throws IllegalArgumentException if a value is negative
   */
  public static double gradeMmPerS(double eccentricityUm, double speedRevPerMin) {
    Require.notNegative("eccentricityUm", eccentricityUm);
    Require.notNegative("speedRevPerMin", speedRevPerMin);
    return eccentricityUm / 1000 * Math.PI * speedRevPerMin / 30;
  }
}
