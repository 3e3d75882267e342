package drumline.cutting.life;

import drumline.cutting.validity.Require;

/**
 * What a tool that does not govern gains when it is slowed until its time fills the cycle.
 *
 * <p>s = t/tcycle; life T grows by s^(−1/n), pieces for each edge by s^(1 − 1/n).
 *
 * <p>Source: Taylor's law; the rule is that of [HITOMI]. A speed window's lower end must be kept:
 * too slow brings built-up edge.
 *
 * @param exponentRatio Taylor's n, above 0 and below 1
 * @param cutS time t in cut now, above 0
 * @param allowedS time that it may take, at least cutS
 */
public record SlackToolLife(double exponentRatio, double cutS, double allowedS) {
  /**
   * @throws IllegalArgumentException if a value is outside its range
   */
  public SlackToolLife {
    Require.inside("exponentRatio", exponentRatio, 0, 1);
    Require.positive("cutS", cutS);
    Require.between("allowedS", allowedS, cutS, Double.MAX_VALUE);
  }

  /** Speed against now. */
  public double speedRatio() {
    return cutS / allowedS;
  }

  /** Life in minutes against now. */
  public double lifeRatio() {
    return Math.pow(speedRatio(), -1 / exponentRatio);
  }

  /** Pieces for each edge against now. */
  public double piecesRatio() {
    return Math.pow(speedRatio(), 1 - 1 / exponentRatio);
  }
}
