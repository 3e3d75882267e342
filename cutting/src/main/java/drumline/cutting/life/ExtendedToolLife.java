package drumline.cutting.life;

import drumline.cutting.validity.Require;

/**
 * Tool life by speed, feed and depth, from one known life.
 *
 * <p>T = T0·(V0/V)^(1/n)·(f0/f)^(1/n1)·(a0/ap)^(1/n2), which is T = K/(V^(1/n)·f^(1/n1)·ap^(1/n2)).
 *
 * <p>Source: [EXPM2] for the form, with 1/n above 1/n1 above 1/n2; typical 1/n1 1.5–2.5 and 1/n2
 * 0.5–0.9 from memory.
 *
 * @param speedPowerRatio 1/n, above feedPowerRatio
 * @param feedPowerRatio 1/n1, above depthPowerRatio
 * @param depthPowerRatio 1/n2, 0 or more
 * @param knownMPerMin speed V0 of the known life, above 0
 * @param knownMmPerRev feed f0 of the known life, above 0
 * @param knownDepthMm depth a0 of the known life, above 0
 * @param knownMin the known life T0, above 0
 */
public record ExtendedToolLife(
    double speedPowerRatio,
    double feedPowerRatio,
    double depthPowerRatio,
    double knownMPerMin,
    double knownMmPerRev,
    double knownDepthMm,
    double knownMin) {
  /**
   * @throws IllegalArgumentException if a value is outside its range or the powers are not in order
   */
  public ExtendedToolLife {
    Require.positive("speedPowerRatio", speedPowerRatio);
    Require.inside("feedPowerRatio", feedPowerRatio, 0, speedPowerRatio);
    Require.notNegative("depthPowerRatio", depthPowerRatio);
    Require.between("depthPowerRatio", depthPowerRatio, 0, Math.nextDown(feedPowerRatio));
    Require.positive("knownMPerMin", knownMPerMin);
    Require.positive("knownMmPerRev", knownMmPerRev);
    Require.positive("knownDepthMm", knownDepthMm);
    Require.positive("knownMin", knownMin);
  }

  /**
   * Life T of a cut.
   *
   * @param speedMPerMin cutting speed V, above 0
   * @param feedMmPerRev feed f, above 0
   * @param depthMm depth ap, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public double lifeMin(double speedMPerMin, double feedMmPerRev, double depthMm) {
    Require.positive("speedMPerMin", speedMPerMin);
    Require.positive("feedMmPerRev", feedMmPerRev);
    Require.positive("depthMm", depthMm);
    return knownMin
        * Math.pow(knownMPerMin / speedMPerMin, speedPowerRatio)
        * Math.pow(knownMmPerRev / feedMmPerRev, feedPowerRatio)
        * Math.pow(knownDepthMm / depthMm, depthPowerRatio);
  }

  /**
   * The plain speed law at one feed and depth.
   *
   * @param feedMmPerRev feed f, above 0
   * @param depthMm depth ap, above 0
   */
  public TaylorToolLife at(double feedMmPerRev, double depthMm) {
    double n = 1 / speedPowerRatio;
    double life = lifeMin(knownMPerMin, feedMmPerRev, depthMm);
    return new TaylorToolLife(n, knownMPerMin * Math.pow(life, n));
  }
}
