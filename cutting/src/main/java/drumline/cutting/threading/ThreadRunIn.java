package drumline.cutting.threading;

import drumline.cutting.validity.Require;

/**
 * Way that a slide needs before a chased thread until its lead is true, and the speed limit that
 * follows from the slide.
 *
 * <p>By acceleration: li = v²/(2a); by the position loop: li = v·T·(ln(1/ε) − 1), T = 1/Kv; v =
 * lead·n/60 (mm/s).
 *
 * <p>Source: [BASIS] 2.5, derived for a first-order position loop; never below 0.
 */
public final class ThreadRunIn {
  private ThreadRunIn() {}

  /**
   * Way to reach the feed speed.
   *
   * @param speedRevPerMin spindle speed n, above 0
   * @param leadMm lead, above 0
   * @param accelerationMmPerS2 slide acceleration a, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static double accelerationMm(
      double speedRevPerMin, double leadMm, double accelerationMmPerS2) {
    Require.positive("accelerationMmPerS2", accelerationMmPerS2);
    double v = feedMmPerS(speedRevPerMin, leadMm);
    return v * v / (2 * accelerationMmPerS2);
  }

  /**
   * Way until the lead error has decayed.
   *
   * @param speedRevPerMin spindle speed n, above 0
   * @param leadMm lead, above 0
   * @param loopGainPerS gain Kv of the position loop, above 0 (16.7 is 1 m/min for each mm of lag)
   * @param errorRatio lead error ε still allowed, above 0 and below 1
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double positionLoopMm(
      double speedRevPerMin, double leadMm, double loopGainPerS, double errorRatio) {
    Require.positive("loopGainPerS", loopGainPerS);
    Require.inside("errorRatio", errorRatio, 0, 1);
    double v = feedMmPerS(speedRevPerMin, leadMm);
    return Math.max(0, v / loopGainPerS * (Math.log(1 / errorRatio) - 1));
  }

  /**
   * Highest spindle speed that the slide's feed allows: n = vz/lead.
   *
   * @param leadMm lead, above 0
   * @param slideMmPerMin highest speed vz of the slide, above 0
   * @throws IllegalArgumentException if a value is not above 0
   */
  public static double limitRevPerMin(double leadMm, double slideMmPerMin) {
    Require.positive("leadMm", leadMm);
    Require.positive("slideMmPerMin", slideMmPerMin);
    return slideMmPerMin / leadMm;
  }

  private static double feedMmPerS(double speedRevPerMin, double leadMm) {
    Require.positive("speedRevPerMin", speedRevPerMin);
    Require.positive("leadMm", leadMm);
    return leadMm * speedRevPerMin / 60;
  }
}
