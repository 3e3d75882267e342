package drumline.cutting.life;

import drumline.cutting.validity.Require;

/**
 * Tool life by cutting speed.
 *
 * <p>V·T^n = C; T = (C/V)^(1/n) (min).
 *
 * <p>Source: [GM] Ghosh and Mallik, Manufacturing Science, problems 4.26–4.28; the equation is F.
 * W. Taylor's of 1907. End of life as stated with the constants, usually 0.3 mm mean flank wear
 * [ISO-3685].
 *
 * @param exponentRatio exponent n, above 0 and below 1
 * @param oneMinuteMPerMin constant C: speed for a life of one minute, above 0
 */
public record TaylorToolLife(double exponentRatio, double oneMinuteMPerMin) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public TaylorToolLife {
    Require.inside("exponentRatio", exponentRatio, 0, 1);
    Require.positive("oneMinuteMPerMin", oneMinuteMPerMin);
  }

  /**
   * The line through two observed lives: n = ln(V1/V2)/ln(T2/T1).
   *
   * @param firstMPerMin speed V1, above 0
   * @param firstMin life T1, above 0
   * @param secondMPerMin speed V2, above 0, other than V1
   * @param secondMin life T2, above 0, longer where the speed is lower
   * @throws IllegalArgumentException if a value is not above 0 or n is not between 0 and 1
   */
  public static TaylorToolLife through(
      double firstMPerMin, double firstMin, double secondMPerMin, double secondMin) {
    Require.positive("firstMPerMin", firstMPerMin);
    Require.positive("firstMin", firstMin);
    Require.positive("secondMPerMin", secondMPerMin);
    Require.positive("secondMin", secondMin);
    double n = Math.log(firstMPerMin / secondMPerMin) / Math.log(secondMin / firstMin);
    Require.inside("exponent through the two points", n, 0, 1);
    return new TaylorToolLife(n, firstMPerMin * Math.pow(firstMin, n));
  }

  /**
   * Life T at a speed.
   *
   * @param speedMPerMin cutting speed V, above 0
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public double lifeMin(double speedMPerMin) {
    Require.positive("speedMPerMin", speedMPerMin);
    return Math.pow(oneMinuteMPerMin / speedMPerMin, 1 / exponentRatio);
  }

  /**
   * Speed V for a life.
   *
   * @param lifeMin life T, above 0
   * @throws IllegalArgumentException if the life is not above 0
   */
  public double speedMPerMin(double lifeMin) {
    Require.positive("lifeMin", lifeMin);
    return oneMinuteMPerMin / Math.pow(lifeMin, exponentRatio);
  }
}
